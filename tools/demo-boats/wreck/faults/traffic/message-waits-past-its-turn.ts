import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const repeater = { id: 'list-gateway', name: 'gateway that repeats all lists', place: 'aft-cabin', tail: taped(0.3) };
const sheet = fillerSheet('list-repeater', 'Gateway that repeats every list of satellites', 1);
const lists = Array.from({ length: 18 }, (_, instance) => ({ pgn: 129540, instance }));

/** Eighteen lists of satellites a second take 253 ms at once; the variation behind them is due every 250 ms. */
export const trafficMessageWaitsPastItsTurn: Fault = {
  rule: 'traffic/message-waits-past-its-turn',
  about: ['lists'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'lists',
      name: 'Bus of lists',
      sheet: {
        ...sheet,
        ports: sheet.ports.map((port) => ({ ...port, sends: [...lists, { pgn: 127258, everyMs: 250 }] })),
      },
      kit: [repeater],
      walk: [{ place: 'aft-cabin', tees: ['list-gateway.n2k', 'feed'] }],
    }),
};
