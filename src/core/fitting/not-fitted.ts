import type { PlanDraft } from '../plan-shape.ts';

/** Fitting left out of a plan. */
export const notFitted = (): Pick<PlanDraft, 'sites' | 'fits' | 'plates'> => ({ sites: [], fits: [], plates: [] });
