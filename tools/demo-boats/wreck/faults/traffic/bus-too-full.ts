import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const talker = { id: 'chatterbox', name: 'unit that never stops', place: 'aft-cabin', tail: taped(0.3) };
const sheet = fillerSheet('chatter-sensor', 'Unit that tells its maker’s own all the time', 1);

/** One unit sends its maker’s own message 1250 times a second: 80 % of the bus. */
export const trafficBusTooFull: Fault = {
  rule: 'traffic/bus-too-full',
  about: ['chatter'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'chatter',
      name: 'Chatter bus',
      sheet: { ...sheet, ports: sheet.ports.map((port) => ({ ...port, sends: [{ pgn: 65280, everyMs: 0.8 }] })) },
      kit: [talker],
      walk: [{ place: 'aft-cabin', tees: ['chatterbox.n2k', 'feed'] }],
    }),
};
