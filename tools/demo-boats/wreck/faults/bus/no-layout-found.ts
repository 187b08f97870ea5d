import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** A hoop over the cockpit, reached by a pipe that was kept for the cable of a light. */
const withHoop = (boat: Boat): Boat => ({
  ...boat,
  places: [
    ...boat.places,
    {
      id: 'hoop',
      name: 'hoop over the cockpit',
      xM: 1,
      yM: 0,
      zM: 2.6,
      exposure: 'weather',
      reach: 'open',
      tees: false,
    },
  ],
  ways: [
    ...boat.ways,
    {
      id: 'hoop-pipe',
      ends: ['stern-locker', 'hoop'],
      length: taped(2.5),
      kind: 'conduit',
      known: 'pulled',
      bore: { mm: 12, how: 'taped' },
      allows: ['feed'],
    },
  ],
});

/** A keypad on a bus of its own stands where no bus cable may be led and no tee be set. */
export const busNoLayoutFound: Fault = {
  rule: 'bus/no-layout-found',
  about: ['hoop-bus'],
  plant: (boat) =>
    withOwnBus(withHoop(boat), {
      id: 'hoop-bus',
      name: 'Hoop bus',
      sheet: fillerSheet('hoop-keypad', 'Keypad on the hoop', 1),
      kit: [{ id: 'hoop-key', name: 'keypad on the hoop', place: 'hoop', tail: taped(0.3) }],
    }),
};
