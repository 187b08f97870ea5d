import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A fridge of 4.6 A on a fuse of 5 A. */
export const powerLittleInHand: Fault = {
  rule: 'power/little-in-hand',
  about: ['c-fridge'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'fridge', name: 'fridge', place: 'aft-cabin' },
      maxA: 4.6,
      circuit: { ratingA: 5 },
    }),
};
