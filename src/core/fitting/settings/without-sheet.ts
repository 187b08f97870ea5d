import type { PlanDraft } from '../../plan-shape.ts';

/** The settings sheet left out of a plan. */
export const withoutSheet = (): Pick<PlanDraft, 'typed' | 'shipPapers' | 'airDraft' | 'atSea'> => ({
  typed: [],
  shipPapers: [],
  airDraft: { valueM: 0, mostM: 0, how: 'guessed', parts: [] },
  atSea: { logs: [], winds: [], leads: [], swings: [], bridges: [] },
});
