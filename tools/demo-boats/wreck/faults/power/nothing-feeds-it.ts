import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A repeater that nobody wired to a breaker. */
export const powerNothingFeedsIt: Fault = {
  rule: 'power/nothing-feeds-it',
  about: ['stern-repeater.dc'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'stern-repeater', name: 'repeater in the cockpit', place: 'cockpit', fate: 'comes' },
      maxA: 0.5,
      circuit: { feeds: [] },
      sheet: { compassSafe: { valueM: 0.3, how: 'papers' } },
    }),
};
