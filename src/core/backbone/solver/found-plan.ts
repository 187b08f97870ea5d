import type { Ground } from './ground.ts';
import type { TeePlan } from './tee-plan.ts';

/** A layout found, on the ground it was found on. */
export interface FoundPlan {
  readonly ground: Ground;
  readonly plan: TeePlan;
}
