import { expect, test } from 'vitest';
import { checkWorkAnswer } from '../check-work-answer.ts';
import type { WorkProblem } from '../problem.ts';
import { refitWork } from '../refit-work.test-helper.ts';
import { drawnWork, drawOf } from '../some-work.test-helper.ts';
import { answerOfSpots } from './answer-of-spots.test-helper.ts';
import { compareCosts } from './darkness.ts';
import { workGround } from './ground.ts';
import { type FoundOrder, improvedOrders } from './improve.ts';

/** What an order costs at most: half hours dark that never may be, half hours dark, last day, ascents. */
type Most = readonly [hardDark: number, dark: number, lastDay: number, ascents: number];

/** All orders that the rules of thumb come to in so much work. */
const foundIn = (problem: WorkProblem, work: number): FoundOrder[] => [
  ...improvedOrders(workGround(problem), { left: work }, () => false),
];

/** Four to nine jobs on a week or two. */
const someJobs = (seed: number): WorkProblem => {
  const draw = drawOf(seed);
  const [jobs, isEasy] = [4 + (seed % 6), seed % 4 > 0];
  return drawnWork(draw, { jobs, days: 6 + draw(8), perDay: 6, hands: 1 + draw(3), isEasy });
};

/** By seed, what the last order costs at most after 1200 places: what it cost when the rules of thumb were last looked at. */
const jobs: readonly (readonly [seed: number, most: Most])[] = [
  [600, [0, 0, 3, 0]],
  [605, [0, 0, 3, 2]],
  [606, [0, 49, 1, 0]],
  [607, [0, 0, 4, 1]],
  [609, [0, 74, 4, 0]],
  [612, [22, 22, 4, 0]],
  [614, [0, 141, 4, 1]],
  [615, [0, 93, 7, 5]],
  [621, [0, 0, 5, 1]],
  [622, [0, 0, 5, 1]],
  [627, [0, 0, 5, 2]],
  [629, [0, 0, 4, 3]],
  [632, [0, 53, 7, 0]],
  [634, [0, 0, 5, 1]],
  [637, [0, 150, 6, 0]],
  [643, [0, 6, 6, 2]],
  [645, [0, 55, 4, 1]],
  [647, [0, 0, 7, 1]],
  [653, [0, 100, 8, 2]],
  [657, [0, 0, 4, 2]],
];

/** The same of refits, by their units and seed, with the places given for each. */
const refits: readonly (readonly [units: number, seed: number, places: number, most: Most])[] = [
  [2, 0, 1200, [0, 27, 9, 0]],
  [2, 4, 1200, [0, 61, 10, 0]],
  [3, 1, 1500, [0, 359, 12, 0]],
  [3, 4, 1500, [0, 110, 11, 0]],
  [4, 1, 1500, [0, 512, 12, 1]],
  [4, 2, 1000, [0, 0, 9, 1]],
];

/** What does not hold of all orders that keep what never may be dark, their costs among it; and whether the last costs too much. */
const judged = (problem: WorkProblem, places: number, [hardDark, dark, lastDay, ascents]: Most) => {
  const found = foundIn(problem, places);
  const kept = found.filter(({ cost }) => cost.hardDark === 0);
  const broken = kept.flatMap((one) => checkWorkAnswer(problem, answerOfSpots(problem, one)).broken);
  const last = found.at(-1)?.cost ?? { hardDark: 9999, dark: 9999, lastDay: 0, ascents: 0, ends: 0 };
  return { broken, isDearer: compareCosts(last, { ...last, hardDark, dark, lastDay, ascents }) > 0 };
};
const fine = { broken: [], isDearer: false };

test('rules of thumb give orders that hold, cost what they say and are as good as they were', () => {
  for (const [seed, most] of jobs) expect({ seed, ...judged(someJobs(seed), 1200, most) }).toEqual({ seed, ...fine });
});

test.each(refits)('of a refit of %i units drawn by %i they are as good as they were', (units, seed, places, most) => {
  expect(judged(refitWork(drawOf(seed), { units, days: 8 + 2 * units }), places, most)).toEqual(fine);
});
