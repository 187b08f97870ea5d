import fc from 'fast-check';
import { expect, it } from 'vitest';
import { deviationAt, deviationCurve, widestGapDeg } from './deviation-curve.ts';
import { solveEquations } from './solve-equations.ts';

const headings = Array.from({ length: 24 }, (_, at) => at * 15);

it('the curve through a swing made of known coefficients has them again (definition of the curve)', () => {
  const term = fc.integer({ min: -80, max: 80 }).map((tenths) => tenths / 10);
  fc.assert(
    fc.property(fc.tuple(term, term, term, term, term), ([a, b, c, d, e]) => {
      const made = { a, b, c, d, e };
      const points = headings.map((headingDeg) => ({ headingDeg, deviationDeg: deviationAt(made, headingDeg) }));
      const found = deviationCurve(points);
      expect(found?.residualDeg).toBeCloseTo(0, 9);
      for (const key of ['a', 'b', 'c', 'd', 'e'] as const) expect(found?.[key]).toBeCloseTo(made[key], 9);
    }),
  );
});

it('on 24 even headings each coefficient is the mean that textbooks take by hand (orthogonality)', () => {
  const points = headings.map((headingDeg, at) => ({ headingDeg, deviationDeg: ((at * 7) % 5) - 2 + (at % 3) }));
  const curve = deviationCurve(points);
  const mean = (weight: (angle: number) => number): number =>
    points.reduce((sum, { headingDeg, deviationDeg }) => sum + deviationDeg * weight((headingDeg * Math.PI) / 180), 0) /
    24;
  expect(curve?.a).toBeCloseTo(
    mean(() => 1),
    9,
  );
  expect(curve?.b).toBeCloseTo(2 * mean(Math.sin), 9);
  expect(curve?.e).toBeCloseTo(2 * mean((angle) => Math.cos(2 * angle)), 9);
});

it('tells what it leaves: one heading read wrong shows', () => {
  const points = headings.map((headingDeg) => ({
    headingDeg,
    deviationDeg: 3 * Math.sin((headingDeg * Math.PI) / 180) + (headingDeg === 90 ? 6 : 0),
  }));
  const curve = deviationCurve(points);
  expect(curve?.residualDeg).toBeGreaterThan(0.5);
  expect(curve?.mostDeg).toBeLessThan(6);
});

it('is not drawn through too few headings, or over a wide gap', () => {
  const points = (turns: number[]) => turns.map((headingDeg) => ({ headingDeg, deviationDeg: 1 }));
  expect(deviationCurve(points([0, 60, 120, 180, 240, 300]))).toBeUndefined();
  expect(deviationCurve(points([0, 15, 30, 45, 60, 75, 90, 105, 120]))).toBeUndefined();
  expect(deviationCurve(points([0, 45, 90, 135, 180, 225, 270, 315]))?.a).toBeCloseTo(1, 9);
  expect(widestGapDeg(points([350, 10, 100]))).toBe(250);
  expect(widestGapDeg([])).toBe(360);
});

it('equations that do not decide every unknown have no answer', () => {
  expect(
    solveEquations(
      [
        [1, 1],
        [2, 2],
      ],
      [1, 2],
    ),
  ).toBeUndefined();
  expect(
    solveEquations(
      [
        [0, 2],
        [4, 0],
      ],
      [2, 8],
    ),
  ).toEqual([2, 1]);
});
