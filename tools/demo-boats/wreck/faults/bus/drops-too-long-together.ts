import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** 16 drops bought as 5 m, one as 2 m, one as 1 m: 83 m, though each passes. */
const tailsM = [...new Array<number>(16).fill(4.9), 1.9, 0.9];

const keypads = tailsM.map((valueM, at) => ({
  id: `cabin-key-${at + 1}`,
  name: `keypad ${at + 1} of the cabins`,
  place: 'aft-cabin',
  tail: { valueM, how: 'taped' as const, lessM: 0.05, moreM: 0.05 },
}));

/** A second bus whose drops add up to 83 m. */
export const busDropsTooLongTogether: Fault = {
  rule: 'bus/drops-too-long-together',
  about: ['cabins'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'cabins',
      name: 'Cabin bus',
      sheet: fillerSheet('cabin-keypad', 'Keypad for a cabin', 1),
      kit: keypads,
      walk: [{ place: 'aft-cabin', tees: [...keypads.map(({ id }) => `${id}.n2k`), 'feed'] }],
    }),
};
