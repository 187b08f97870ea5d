import type { BoatIndex } from '../boat/boat-index.ts';
import type { PlanDraft, StandingJoin } from '../plan-shape.ts';
import { planSites } from './plan-sites.ts';

/** What fitting is planned from: the boat, her lines with their feeds, who is joined to whom, and what is near her compasses. */
export interface FittingInput extends Pick<PlanDraft, 'lines' | 'feeds' | 'compass'> {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
}

/** Whether everything fits where it is to go, and works there. */
export const planFitting = ({ index }: FittingInput): Pick<PlanDraft, 'sites'> => ({ sites: planSites(index) });
