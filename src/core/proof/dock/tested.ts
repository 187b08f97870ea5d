import type { BoatLog } from '../../log/boat-log.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { foundOf } from './found-of.ts';
import { judge } from './judge.ts';

/** How far the tests of a boat have come. */
export interface Tested {
  readonly total: number;
  /** of these, tried */
  readonly tried: number;
  /** of those tried, not as they should be */
  readonly wrong: number;
}

/** How many of the tests of a plan were tried by the log, and how many of them came out wrong. */
export const testedOf = (tests: readonly TestEntry[], log: Pick<BoatLog, 'readings'>): Tested => {
  const found = foundOf(log.readings);
  const verdicts = tests.flatMap((test) => {
    const value = found(test.id);
    return value === undefined ? [] : [judge(test, value, found).verdict];
  });
  return {
    total: tests.length,
    tried: verdicts.length,
    wrong: verdicts.filter((verdict) => verdict === 'wrong').length,
  };
};
