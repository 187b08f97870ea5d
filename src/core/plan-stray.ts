import { type CompassInput, planCompass } from './plan-compass.ts';
import { type IsolationInput, planIsolation } from './plan-isolation.ts';
import type { PlanDraft } from './plan-shape.ts';

type StrayParts = Pick<PlanDraft, 'compass' | 'isolation'>;

/** Where currents and their fields go that should not: what turns each compass, what meets the hull. */
export const planStray = (input: CompassInput & IsolationInput): StrayParts => ({
  compass: planCompass(input),
  isolation: planIsolation(input),
});
