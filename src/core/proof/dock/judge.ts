import type { TestEntry, TestWindow } from '../../tests-shape.ts';

/** What of a test decides what a reading of it is worth, and in which unit. */
export type TestLimits = Pick<TestEntry, 'test' | 'unit' | 'right' | 'passes' | 'under' | 'like'>;

/** What was found at one test: a figure, or yes or no. A meter that shows an open circuit has found an infinite resistance. */
export type Found = number | boolean;

export type Verdict = 'right' | 'doubtful' | 'wrong' | 'noted';

/**
 * What a reading is worth. `limit` is the edge of the window that it lies outside of and `by` how far, in the unit of the test;
 * `against` the reading it is held beside, with `by` the difference. `why`: which of the test’s windows decided.
 */
export interface Judged {
  readonly verdict: Verdict;
  readonly why: 'answer' | 'no' | 'window' | 'passes' | 'swapped' | 'under' | 'like' | 'alone';
  readonly by?: number;
  readonly limit?: number;
  readonly against?: number;
}

interface Edge {
  readonly by: number;
  readonly limit: number;
}

/** How far a figure lies outside a window; absent where it lies inside. */
const outside = (value: number, { least, most }: TestWindow): Edge | undefined => {
  if (least !== undefined && value < least) return { by: least - value, limit: least };
  if (most !== undefined && value > most) return { by: value - most, limit: most };
  return undefined;
};

/** Red and black are the wrong way round wherever volts of a feed are less than nothing. */
const supplies: ReadonlySet<TestEntry['test']> = new Set(['bus-volts', 'feed-polarity', 'feed-volts']);

/** A hair of a volt under nothing is the meter, not the wires. */
const swappedV = -1;

const judgedUnder = (under: NonNullable<TestEntry['under']>, value: number, upper: number): Judged | undefined => {
  const lostV = upper - value;
  const { rightV, mostV } = under;
  if (mostV !== undefined && lostV > mostV)
    return { verdict: 'wrong', why: 'under', by: lostV - mostV, limit: mostV, against: upper };
  if (rightV !== undefined && lostV > rightV)
    return { verdict: 'doubtful', why: 'under', by: lostV - rightV, limit: rightV, against: upper };
  return undefined;
};

const judgedByWindow = ({ right, passes }: TestLimits, value: number): Judged | undefined => {
  const beyond = passes === undefined ? undefined : outside(value, passes);
  if (beyond !== undefined) return { verdict: 'wrong', why: 'passes', ...beyond };
  const off = right === undefined ? undefined : outside(value, right);
  return off === undefined
    ? undefined
    : { verdict: passes === undefined ? 'wrong' : 'doubtful', why: 'window', ...off };
};

const numberOf = (found: Found | undefined): number | undefined => (typeof found === 'number' ? found : undefined);

const judgedFigure = (test: TestLimits, value: number, of: (id: string) => Found | undefined): Judged => {
  if (supplies.has(test.test) && value < swappedV) return { verdict: 'wrong', why: 'swapped', by: -value };
  const byWindow = judgedByWindow(test, value);
  const upper = test.under === undefined ? undefined : numberOf(of(test.under.test));
  const byUpper = test.under === undefined || upper === undefined ? undefined : judgedUnder(test.under, value, upper);
  const worst = [byWindow, byUpper].find((one) => one?.verdict === 'wrong') ?? byWindow ?? byUpper;
  if (worst !== undefined) return worst;
  const beside = test.like === undefined ? undefined : numberOf(of(test.like));
  if (beside !== undefined) return { verdict: 'noted', why: 'like', by: value - beside, against: beside };
  const hasLimit = test.right !== undefined || test.passes !== undefined || test.under !== undefined;
  return hasLimit ? { verdict: 'right', why: 'window' } : { verdict: 'noted', why: 'alone' };
};

/**
 * A reading held against its test: right by the plan; in doubt where it passes but is not what this boat should read; wrong;
 * or only noted, where nothing says what it should be. `of` gives what was found at other tests. Pure.
 *
 * @example judge(test, 71, () => undefined) // { verdict: 'wrong', why: 'passes', by: 1, limit: 70 }
 */
export const judge = (test: TestLimits, found: Found, of: (id: string) => Found | undefined): Judged =>
  typeof found === 'boolean'
    ? { verdict: found ? 'right' : 'wrong', why: found ? 'answer' : 'no' }
    : judgedFigure(test, found, of);
