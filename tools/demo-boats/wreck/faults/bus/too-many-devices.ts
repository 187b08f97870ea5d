import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const keypads = Array.from({ length: 51 }, (_, at) => ({
  id: `lamp-key-${at + 1}`,
  name: `keypad ${at + 1} of the lamps`,
  place: 'panel-locker',
  tail: taped(0.3),
}));

/** 51 keypads on one bus. */
export const busTooManyDevices: Fault = {
  rule: 'bus/too-many-devices',
  about: ['lamps'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'lamps',
      name: 'Lamp bus',
      sheet: fillerSheet('lamp-keypad', 'Keypad for a lamp', 1),
      kit: keypads,
      walk: [{ place: 'panel-locker', tees: [...keypads.map(({ id }) => `${id}.n2k`), 'feed'] }],
    }),
};
