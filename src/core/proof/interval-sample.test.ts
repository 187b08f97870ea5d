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

test('a long recording gives the median of all of it within a twentieth, and always the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1000 }), (seed) => {
      let timeUs = 0;
      const times = Array.from({ length: 12_000 }, (_unused, at) => {
        timeUs += 100_000 + ((at * seed * 7919) % 1000) * 50;
        return timeUs;
      });
      const steps = times.slice(1).map((at, index) => at - (times[index] ?? 0));
      const exactMs = ([...steps].sort((a, b) => a - b)[5999] ?? 0) / 1000;
      const found = feed(times).medianMs() ?? 0;
      expect(Math.abs(found - exactMs) / exactMs).toBeLessThan(0.05);
      expect(feed(times).medianMs()).toBe(found);
    }),
    { numRuns: 20 },
  );
});
