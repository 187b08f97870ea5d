import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { asRead, withSecondSheet } from './own-sheets.ts';

const wires: Sheet['plugs'][number] = { id: 'wires', connector: 'leads', gender: 'none' };

const bare = asRead('rudder-converter-sheet', 'Converter to 0183, as its manual has it', { hears: [{ pgn: 127245 }] });
const converter: Sheet = {
  ...bare,
  kind: 'converter',
  plugs: [...bare.plugs, wires],
  ports: [
    ...bare.ports,
    { id: 'out', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'talk', sends: [{ sentence: 'RSA' }] },
  ],
  turns: [{ fromPort: 'n2k', toPort: 'out', carries: [{ reading: 'rudder' }] }],
};

const dial: Sheet = {
  id: 'rudder-dial-sheet',
  name: 'Rudder dial, as its manual has it',
  kind: 'instrument',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on messages.',
  plugs: [wires],
  ports: [
    { id: 'in', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'listen', hears: [{ sentence: 'RSA' }] },
  ],
};

/** Two rudders on the bus, and a dial behind a converter that knows one. */
export const readingsOneOfTwoLost: Fault = {
  rule: 'readings/one-of-two-lost',
  about: ['rudder-converter.out', 'rudder-dial'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'rudder-bus',
      name: 'Rudder bus',
      sheet: asRead('rudder-sheet', 'Rudder sensor, as its manual has it', { sends: [{ pgn: 127245 }] }),
      kit: [
        ...['port', 'stbd'].map((side, instance) => ({
          id: `rudder-${side}`,
          name: `rudder sensor, ${side === 'port' ? 'port' : 'starboard'}`,
          place: 'aft-cabin',
          tail: taped(0.3),
          instances: [{ port: 'n2k', reading: 'rudder' as const, instance }],
        })),
        { id: 'rudder-converter', name: 'converter for the rudder dial', place: 'aft-cabin', tail: taped(0.3) },
      ],
      walk: [{ place: 'aft-cabin', tees: ['rudder-port.n2k', 'rudder-stbd.n2k', 'rudder-converter.n2k', 'feed'] }],
    });
    const withDial = withSecondSheet(boat, 'rudder-converter', converter);
    return {
      ...withDial,
      sheets: [...withDial.sheets, dial],
      kit: [
        ...withDial.kit,
        { id: 'rudder-dial', name: 'rudder dial', sheet: dial.id, fate: 'stays', place: 'aft-cabin', tail: taped(0.3) },
      ],
      joins: [
        ...withDial.joins,
        {
          id: 'pair-rudder',
          kind: 'nmea0183',
          members: [
            { kit: 'rudder-converter', port: 'out', as: 'talk' },
            { kit: 'rudder-dial', port: 'in', as: 'listen' },
          ],
          hold: 'fixed',
        },
      ],
    };
  },
};
