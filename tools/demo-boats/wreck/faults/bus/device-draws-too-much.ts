import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const lamp = { id: 'greedy-lamp', name: 'deck lamp on the bus', place: 'panel-locker', tail: taped(0.3) };

/** A deck lamp takes LEN 24 from the bus. */
export const busDeviceDrawsTooMuch: Fault = {
  rule: 'bus/device-draws-too-much',
  about: ['greedy-lamp.n2k'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'greedy',
      name: 'Deck lamp bus',
      sheet: fillerSheet('greedy-lamp-sheet', 'Deck lamp on the bus', 24),
      kit: [lamp],
      walk: [{ place: 'panel-locker', tees: ['greedy-lamp.n2k', 'feed'] }],
    }),
};
