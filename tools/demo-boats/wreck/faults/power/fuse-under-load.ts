import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** Two lamps added to a breaker of 3 A over the years. */
export const powerFuseUnderLoad: Fault = {
  rule: 'power/fuse-under-load',
  about: ['c-deck-lamps', 'deck-lamps.dc'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'deck-lamps', name: 'deck lamps', place: 'cockpit' },
      maxA: 4.2,
      circuit: { ratingA: 3, kind: 'breaker' },
    }),
};
