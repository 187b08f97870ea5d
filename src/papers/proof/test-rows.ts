import type { BoatLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { foundOf } from '../../core/proof/dock/found-of.ts';
import type { TestEntry } from '../../core/tests-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { foundWords } from './judged-words.ts';
import { expectWords, testPlace, testWords } from './test-words.ts';

/** What was found at one test; absent while it is still to be done. */
interface TestResult {
  readonly found: string;
  readonly day: string;
  readonly by: string;
}

/** One test with where it is done and what is expected, and what was found once somebody did it. */
export interface TestRow {
  readonly test: TestEntry;
  readonly what: string;
  readonly where: string;
  readonly expect: string;
  readonly result?: TestResult;
}

/** The tests of a plan as rows, with what the log has of each. */
export const testRows = (index: CardBoat, tests: Plan['tests'], log: BoatLog): TestRow[] => {
  const of = foundOf(log.readings);
  return tests.map((test) => {
    const found = foundWords(test, of);
    const entry = log.readings.get(test.id);
    return {
      test,
      what: testWords(index, test),
      where: testPlace(index, test),
      expect: expectWords(index, test),
      ...(found === undefined || entry === undefined
        ? {}
        : { result: { found, day: entry.at.slice(0, 10), by: entry.by ?? '' } }),
    };
  });
};
