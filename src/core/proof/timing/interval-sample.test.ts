import fc from 'fast-check';
import { expect, test } from 'vitest';
import { startIntervals } from './interval-sample.ts';

const feed = (timesUs: readonly number[]) => {
  const sample = startIntervals();
  for (const timeUs of timesUs) sample.add(timeUs);
  return sample;
};

test('one late message moves the mean but not the median', () => {
  const sample = feed([0, 100_000, 200_000, 900_000, 1_000_000]);
  expect([sample.medianMs(), sample.meanMs()]).toEqual([100, 250]);
});

test('of an even count the median is the mean of the two in the middle', () => {
  expect(feed([0, 100_000, 300_000]).medianMs()).toBe(150);
});

test('one message has no interval', () => {
  expect([feed([5]).medianMs(), feed([5]).meanMs()]).toEqual([undefined, undefined]);
});

/** Share of the numbers below a value, and share not above it. */
const ranksOf = (value: number, numbers: readonly number[]): [below: number, upTo: number] => [
  numbers.filter((one) => one < value).length / numbers.length,
  numbers.filter((one) => one <= value).length / numbers.length,
];

test('of a long recording the median stands within a twentieth of the middle of all intervals, and is always the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1000 }), (seed) => {
      let timeUs = 0;
      const times = Array.from({ length: 12_000 }, (_unused, at) => {
        timeUs += 100_000 + ((at * seed * 7919) % 1000) * 50;
        return timeUs;
      });
      const steps = times.slice(1).map((at, index) => at - (times[index] ?? 0));
      const found = feed(times).medianMs() ?? 0;
      // by rank, not by value: among a few values that repeat, the middle may fall into the gap between two
      const [below, upTo] = ranksOf(found * 1000, steps);
      expect(below).toBeLessThan(0.55);
      expect(upTo).toBeGreaterThan(0.45);
      expect(feed(times).medianMs()).toBe(found);
    }),
    { numRuns: 20 },
  );
});
