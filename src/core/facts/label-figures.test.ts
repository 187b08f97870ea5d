import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelFigures, wrapLengthMm } from './label-figures.ts';

test('a label round a cable of 6 mm is at least 24.85 mm long (MR-05, workshop practice)', () => {
  expect(wrapLengthMm({ outsideMm: 6 })).toBeCloseTo(24.8496, 1);
});

test('a label laps over itself by the same length on any cable', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 60, noNaN: true }), (outsideMm) => {
      const once = Math.PI * outsideMm;
      expect(wrapLengthMm({ outsideMm }) - once).toBeCloseTo(labelFigures.wrapOverlap.value, 9);
    }),
  );
});
