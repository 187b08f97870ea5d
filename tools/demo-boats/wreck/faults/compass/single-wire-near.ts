import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** The lamp of the compass has its plus from the dash and its minus from a bolt behind the console. */
export const compassSingleWireNear: Fault = {
  rule: 'compass/single-wire-near',
  about: ['compass', 'binnacle-lamp'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'binnacle-lamp', name: 'lamp of the compass', place: 'binnacle', tail: taped(0.3) },
      maxA: 0.5,
      circuit: { laid: 'single' },
    }),
};
