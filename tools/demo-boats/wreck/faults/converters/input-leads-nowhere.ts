import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const read = { source: 'manual', sourceNote: 'Read aboard in its manual, chapter on connections.' } as const;
const plugs: Sheet['plugs'] = [{ id: 'wires', connector: 'leads', gender: 'none' }];
const converter: Sheet = {
  ...read,
  id: 'one-way',
  name: 'One-way converter, as its manual has it',
  kind: 'converter',
  plugs,
  ports: [
    { id: 'in', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'listen' },
    { id: 'out', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'talk' },
  ],
};
const log: Sheet = {
  ...read,
  id: 'log-sheet',
  name: 'Old log, as its manual has it',
  kind: 'log',
  plugs,
  ports: [{ id: 'out', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'talk', sends: [{ sentence: 'VHW' }] }],
};

/** The old log is wired to the side of a converter that only talks to radios. */
export const convertersInputLeadsNowhere: Fault = {
  rule: 'converters/input-leads-nowhere',
  about: ['pair-log', 'conv-backwards.in'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, converter, log],
    kit: [
      ...boat.kit,
      { id: 'log-old', name: 'old log', sheet: 'log-sheet', fate: 'stays', place: 'helm' },
      {
        id: 'conv-backwards',
        name: 'converter bought the wrong way round',
        sheet: 'one-way',
        fate: 'comes',
        place: 'helm-locker',
      },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'pair-log',
        kind: 'nmea0183',
        members: [
          { kit: 'log-old', port: 'out', as: 'talk' },
          { kit: 'conv-backwards', port: 'in', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
