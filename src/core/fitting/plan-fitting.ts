import type { BoatIndex } from '../boat/boat-index.ts';
import type { BusEntry, PlanDraft, StandingJoin } from '../plan-shape.ts';
import { planOpenings } from './openings/plan-openings.ts';
import { planSites } from './plan-sites.ts';
import { withSensors } from './with-sensors.ts';

/** What fitting is planned from: the boat, her lines with their feeds, who is joined to whom, and what is near her compasses. */
export interface FittingInput extends Pick<PlanDraft, 'lines' | 'feeds' | 'compass'> {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
}

/** Whether everything fits where it is to go, and works there. */
export const planFitting = (input: FittingInput): Pick<PlanDraft, 'sites' | 'fits' | 'plates'> => ({
  ...planOpenings(input),
  sites: withSensors(input, planSites(input.index)),
});
