import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Drive } from '../boat/drive.ts';
import { outputWanted } from './output-wanted.ts';

const linear: Drive = { type: 'linear', motorV: 12, runA: 5, peakA: 15, clutchV: 12, clutchA: 1 };

test('memory-pilot-outputs: a peak of 34 A wants an output of 40 A, one of 20 A just that', () => {
  expect(outputWanted({ ...linear, peakA: 34 })).toEqual({
    works: 'reversing-motor',
    motorV: 12,
    peakA: 40,
    clutch: true,
    clutchV: 12,
    clutchA: 1,
  });
  expect(outputWanted({ ...linear, peakA: 20 }).peakA).toBe(20);
});

test('a pump that runs all the time wants valves worked, and no clutch', () => {
  expect(outputWanted({ type: 'constant-pump', motorV: 24, runA: 2, peakA: 4 })).toEqual({
    works: 'solenoid-valves',
    motorV: 24,
    peakA: 10,
    clutch: false,
  });
});

test('the output named is always enough, and none is named where none is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 80, noNaN: true }), (peakA) => {
      const { peakA: givenA } = outputWanted({ ...linear, peakA });
      if (givenA === undefined) expect(peakA).toBeGreaterThan(40);
      else expect(givenA).toBeGreaterThanOrEqual(peakA);
    }),
  );
});
