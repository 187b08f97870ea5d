import { expect, test } from 'vitest';
import { startTimeAxis } from './time-axis.ts';

const run = (timesS: readonly number[]) => {
  const axis = startTimeAxis();
  const elapsed = timesS.map((timeS) => axis.advance(Math.round(timeS * 1e6)));
  return { elapsed, summary: axis.summary() };
};

test('MS-93: a jump of more than 60 s either way adds no time (project choice)', () => {
  const { summary } = run([100, 100.5, 20, 20.4, 101]);
  expect(summary?.durationUs).toBe(900_000);
  expect(summary?.clockSteps).toEqual([
    { atFrame: 2, jumpUs: -80_500_000 },
    { atFrame: 4, jumpUs: 80_600_000 },
  ]);
});

test('a pause of 60 s is a silence, not a jump', () => {
  const { summary } = run([100, 160, 160.5]);
  expect(summary).toEqual({ durationUs: 60_500_000, clockSteps: [], longestSilenceUs: 60_000_000 });
});

test('a recording without times has no duration', () => {
  const axis = startTimeAxis();
  expect(axis.advance(undefined)).toBeUndefined();
  expect(axis.summary()).toBeUndefined();
});
