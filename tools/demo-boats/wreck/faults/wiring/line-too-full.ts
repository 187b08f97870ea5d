import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const part = (id: string, role: 'talk' | 'listen', sentences: readonly (readonly [string, number])[]): Sheet => ({
  id,
  name: `Line ${id}, as its manual has it`,
  kind: 'serial-part',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: [{ id: 'wires', connector: 'leads', gender: 'none' }],
  ports: [
    {
      id: 'line',
      onPlug: 'wires',
      protocol: 'nmea0183',
      baud: 4800,
      role,
      ...(role === 'talk' ? { sends: sentences.map(([sentence, everyMs]) => ({ sentence, everyMs })) } : {}),
    },
  ],
});

/** Heading ten times a second, position and route on one slow line. */
export const wiringLineTooFull: Fault = {
  rule: 'wiring/line-too-full',
  about: ['gyro-old.line'],
  plant: (boat) => ({
    ...boat,
    sheets: [
      ...boat.sheets,
      part('full-talker', 'talk', [
        ['HDG', 100],
        ['RMC', 1000],
        ['GGA', 1000],
        ['APB', 1000],
        ['RMB', 1000],
        ['XTE', 1000],
      ]),
      part('full-listener', 'listen', []),
    ],
    kit: [
      ...boat.kit,
      { id: 'gyro-old', name: 'old sensor that sends all it has', sheet: 'full-talker', fate: 'stays', place: 'helm' },
      { id: 'drowned', name: 'old repeater of heading', sheet: 'full-listener', fate: 'stays', place: 'helm' },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'pair-full',
        kind: 'nmea0183',
        members: [
          { kit: 'gyro-old', port: 'line', as: 'talk' },
          { kit: 'drowned', port: 'line', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
