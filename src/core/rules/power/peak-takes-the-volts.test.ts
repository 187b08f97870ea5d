import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { peakTakesTheVolts } from './peak-takes-the-volts.ts';
import { aFeed } from './power-case.test-helper.ts';

const found = (peakA: number, over: Parameters<typeof aFeed>[0] = {}) =>
  findingsOf(peakTakesTheVolts, {
    plan: { feeds: [aFeed({ loadA: 3, realDropV: 0.3, atEndV: 11.5, leastV: 10.8, peakA, ...over })] },
  });

test('each ampere of the peak loses what an ampere loses: 0.1 V, so 10 A reach 10.8 V and 11 A do not', () => {
  expect(found(10)).toEqual([]);
  expect(found(11)).toMatchObject([{ level: 'doubt', limit: { value: 10.8 } }]);
  expect(found(11)[0]?.measured?.value).toBeCloseTo(10.7, 9);
});

test('a unit that is too low without its peak is told of by its volts alone', () => {
  expect(found(11, { atEndV: 10.7 })).toEqual([]);
});
