import type { WorkCost, WorkProblem } from './problem.ts';
import { costOfSpots } from './solver/darkness.ts';
import { workGround } from './solver/ground.ts';
import { plainSpots } from './solver/plain-spots.ts';

/** What the same jobs cost one after another, as `plainSpots` has them; absent where that does not come to an end. */
export const plainOrder = (problem: WorkProblem): WorkCost | undefined => {
  const ground = workGround(problem);
  const spots = plainSpots(ground);
  if (spots === undefined) return undefined;
  const { dark, lastDay, ascents } = costOfSpots(ground, spots);
  return { dark, lastDay, ascents };
};
