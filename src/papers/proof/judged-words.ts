import { type Found, type Judged, judge, type TestLimits, type Verdict } from '../../core/proof/dock/judge.ts';
import type { TestEntry } from '../../core/tests-shape.ts';
import { printReading } from './print-reading.ts';

/** A verdict in a word, with a sign of its own so that no colour is needed to read it. */
export const verdictWords: Readonly<Record<Verdict, { readonly word: string; readonly sign: string }>> = {
  right: { word: 'right', sign: '✓' },
  doubtful: { word: 'in doubt', sign: '?' },
  wrong: { word: 'wrong', sign: '✗' },
  noted: { word: 'noted', sign: '·' },
};

const sideOf = (found: Found, limit: number): string => (typeof found === 'number' && found < limit ? 'under' : 'over');

/** Why a reading is worth what it is, in a sentence: by how much, and against which limit. */
export const judgedWords = (
  test: TestLimits,
  found: Found,
  { verdict, why, by = 0, limit = 0, against = 0 }: Judged,
): string => {
  const { unit } = test;
  const far = printReading(by, unit);
  // an open circuit lies over a limit by no figure
  const off = `${far}${far === 'open' ? ',' : ''} ${sideOf(found, limit)}`;
  switch (why) {
    case 'passes':
      return `Wrong: ${off} the ${printReading(limit, unit)} that passes.`;
    case 'window':
      if (verdict === 'right') return 'Right.';
      return verdict === 'wrong'
        ? `Wrong: ${off} the limit of ${printReading(limit, unit)}.`
        : `In doubt: it passes, but is ${off} the ${printReading(limit, unit)} this boat should read.`;
    case 'swapped':
      return 'Wrong: red and black are swapped. Switch off at once.';
    case 'under':
      return `${verdict === 'wrong' ? 'Wrong' : 'In doubt'}: ${printReading(limit + by, unit)} under the ${printReading(against, unit)} at the feed, where ${printReading(limit, unit)} ${verdict === 'wrong' ? 'pass' : 'are expected'}.`;
    case 'like':
      return `Noted: ${printReading(Math.abs(by), unit)} ${by < 0 ? 'less' : 'more'} than the ${printReading(against, unit)} before.`;
    case 'alone':
      return 'Noted.';
    case 'answer':
      return 'Right.';
    case 'no':
      return 'Not as it should be.';
  }
};

/** What was found, as it is printed, with its verdict. */
export const foundWords = (test: TestEntry, of: (id: string) => Found | undefined): string | undefined => {
  const found = of(test.id);
  if (found === undefined) return undefined;
  const { sign, word } = verdictWords[judge(test, found, of).verdict];
  return typeof found === 'boolean'
    ? `${sign} ${found ? 'yes' : 'no'}`
    : `${sign} ${printReading(found, test.unit)}, ${word}`;
};
