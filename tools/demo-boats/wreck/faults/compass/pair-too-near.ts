import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A fan on the dash top, its leads led round the foot of the compass. */
export const compassPairTooNear: Fault = {
  rule: 'compass/pair-too-near',
  about: ['compass', 'dash-fan'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'dash-fan', name: 'fan on the dash top', place: 'binnacle', tail: taped(0.3) },
      maxA: 6,
    }),
};
