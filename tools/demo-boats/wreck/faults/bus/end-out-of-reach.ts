import { withWalk } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** The trunk runs on into the chain locker and ends there, where nobody gets at the terminator. */
export const busEndOutOfReach: Fault = {
  rule: 'bus/end-out-of-reach',
  about: ['nav', 'fore-locker'],
  plant: (boat) =>
    withWalk(boat, 'nav', (walk) => [
      { place: 'fore-locker', tees: [] },
      ...walk.map((step) => (step.place === 'fore-cabin' ? { ...step, via: 'w1' } : step)),
    ]),
};
