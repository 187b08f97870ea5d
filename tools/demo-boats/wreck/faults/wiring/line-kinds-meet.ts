import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const part = (id: string, line: 'rs232' | 'differential', role: 'talk' | 'listen'): Sheet => ({
  id,
  name: `Serial ${id}, as its manual has it`,
  kind: 'serial-part',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: [{ id: 'wires', connector: 'leads', gender: 'none' }],
  ports: [{ id: 'serial', onPlug: 'wires', protocol: 'nmea0183', line, baud: 4800, role }],
});

/** A computer's RS-232 port joined bare to an old repeater's pair. */
export const wiringLineKindsMeet: Fault = {
  rule: 'wiring/line-kinds-meet',
  about: ['pair-serial', 'computer.serial', 'repeater.serial'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, part('laptop-port', 'rs232', 'talk'), part('repeater-port', 'differential', 'listen')],
    kit: [
      ...boat.kit,
      { id: 'computer', name: 'computer at the chart table', sheet: 'laptop-port', fate: 'stays', place: 'helm' },
      { id: 'repeater', name: 'old repeater', sheet: 'repeater-port', fate: 'stays', place: 'helm' },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'pair-serial',
        kind: 'nmea0183',
        members: [
          { kit: 'computer', port: 'serial', as: 'talk' },
          { kit: 'repeater', port: 'serial', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
