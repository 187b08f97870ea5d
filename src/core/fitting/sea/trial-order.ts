import { seaTrials } from '../../facts/trial-tests.ts';

/** What can be proved at sea with a calculator, by the names the sea trials have. */
export const seaSteps = ['heading', 'compass', 'depth', 'log', 'wind'] as const;
export type SeaStep = (typeof seaSteps)[number];

/** Steps in the order in which each needs the ones before it: true wind hangs on heading and speed through the water. */
export const inTrialOrder = (steps: readonly SeaStep[]): SeaStep[] => {
  const turn = (step: SeaStep): number => seaTrials.findIndex(({ id }) => id === step);
  return [...steps].sort((a, b) => turn(a) - turn(b));
};
