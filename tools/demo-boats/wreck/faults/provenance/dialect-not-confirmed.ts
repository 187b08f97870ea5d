import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const part = (id: string, dialect: string, role: 'talk' | 'listen'): Sheet => ({
  id,
  name: `Pilot ${id}, as its manual has it`,
  kind: 'pilot-part',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  compassSafe: { valueM: 0.3, how: 'papers' },
  plugs: [{ id: 'net', connector: 'own-plug', gender: 'male' }],
  ports: [{ id: 'net', onPlug: 'net', protocol: 'single-wire', dialect, role }],
});

/** A pilot head of an unknown generation on an old computer of the same maker; nobody asked whether they speak. */
export const provenanceDialectNotConfirmed: Fault = {
  rule: 'provenance/dialect-not-confirmed',
  about: ['pilot-wire', 'pilot-computer', 'pilot-head'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, part('brain', 'maker-a/1', 'talk'), part('head', 'maker-a/unknown', 'listen')],
    kit: [
      ...boat.kit,
      { id: 'pilot-computer', name: 'old pilot computer', sheet: 'brain', fate: 'stays', place: 'panel-locker' },
      { id: 'pilot-head', name: 'pilot head from a fair', sheet: 'head', fate: 'comes', place: 'helm' },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'pilot-wire',
        kind: 'single-wire',
        members: [
          { kit: 'pilot-computer', port: 'net', as: 'talk' },
          { kit: 'pilot-head', port: 'net', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
