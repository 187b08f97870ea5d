import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withJoin, withMetalUnit } from '../../on-steel.ts';

const coax = { id: 'coax', connector: 'coax-plug', gender: 'male' } as const;

/** A spare radio and its whip on the stern rail, which is welded to the hull. */
export const isolationBraidToHull: Fault = {
  rule: 'isolation/braid-to-hull',
  about: ['spare-radio', 'stern-whip'],
  plant: (before) => {
    const boat = withMetalUnit(before, {
      kit: { id: 'spare-radio', name: 'spare radio', place: 'stern-locker', tail: taped(0.4), mount: 'isolated' },
      kind: 'radio',
      earthing: { braidTo: 'negative' },
    });
    const withSocket = boat.sheets.map((sheet) =>
      sheet.id === 'spare-radio-sheet'
        ? {
            ...sheet,
            plugs: [...sheet.plugs, { ...coax, gender: 'female' as const }],
            ports: [...sheet.ports, { id: 'rf', onPlug: 'coax', protocol: 'coax' as const, role: 'listen' as const }],
          }
        : sheet,
    );
    return withJoin(
      {
        ...boat,
        sheets: [
          ...withSocket,
          {
            id: 'stern-whip-sheet',
            name: 'Whip with a metal foot, by its manual',
            kind: 'radio-antenna',
            source: 'manual',
            sourceNote: 'Invented for this boat.',
            plugs: [coax],
            ports: [{ id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'talk' }],
            earthing: { body: 'metal', bodyTo: 'nothing', braidTo: 'body' },
          },
        ],
        kit: [
          ...boat.kit,
          {
            id: 'stern-whip',
            name: 'whip on the stern rail',
            sheet: 'stern-whip-sheet',
            fate: 'stays',
            place: 'stern-locker',
            tail: taped(0.4),
            mount: 'metal',
          },
        ],
      },
      {
        id: 'coax-spare',
        kind: 'coax',
        members: [
          { kit: 'stern-whip', port: 'rf', as: 'talk' },
          { kit: 'spare-radio', port: 'rf', as: 'listen' },
        ],
      },
    );
  },
};
