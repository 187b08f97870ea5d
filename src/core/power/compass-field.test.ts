import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compassDeviation } from './compass-deviation.ts';
import { compassSafeDistance } from './compass-safe-distance.ts';
import { tailLoopFieldUt, wireFieldUt } from './wire-field.ts';

const near = (found: number, expected: number): void => expect(Math.abs(found / expected - 1)).toBeLessThan(0.01);

const physics = 'B = 0.2 I/d; pair 0.2 I s/(d² - s²/4); δ = atan(B/H); computed physics';

describe('a wire at a compass', () => {
  it.each([
    ['PW-77', physics, 5, 0.3, 20, undefined, 3.3333, 9.462],
    ['PW-78', physics, 5, 0.3, 20, 0.004, 0.0444, 0.127],
    ['PW-79', physics, 10, 1, 15, undefined, 2, 7.595],
    ['PW-80', physics, 1, 0.1, 20, undefined, 2, 5.711],
  ] as const)(
    '%s (%s): %i A at %f m, H %i µT, wires %s m apart: %f µT, %f°',
    (_id, _source, currentA, distanceM, horizontalUt, pairSpacingM, microtesla, deg) => {
      const fieldUt = wireFieldUt({ currentA, distanceM, ...(pairSpacingM === undefined ? {} : { pairSpacingM }) });
      near(fieldUt, microtesla);
      near(compassDeviation({ fieldUt, horizontalUt }).squareDeg, deg);
    },
  );

  it('PW-85 (B ≤ 2e-7 I A / d³ tesla, computed physics): an untwisted tail of 100 x 20 mm makes 0.074 µT at 0.3 m with 5 A', () => {
    near(tailLoopFieldUt({ currentA: 5, loopAreaM2: 0.002, distanceM: 0.3 }), 0.0741);
  });

  it('turns it farther in the worst direction, and any way where it is as strong as the Earth’s field', () => {
    const { squareDeg, worstDeg } = compassDeviation({ fieldUt: 10, horizontalUt: 20 });
    expect(squareDeg).toBeCloseTo(26.57, 2);
    expect(worstDeg).toBeCloseTo(30, 9);
    expect(compassDeviation({ fieldUt: 20, horizontalUt: 20 }).worstDeg).toBe(180);
    expect(compassDeviation({ fieldUt: 0, horizontalUt: 0 })).toEqual({ squareDeg: 0, worstDeg: 0 });
  });

  it('is never a wrong number close up: at the wire and between the wires the field has no end', () => {
    expect(wireFieldUt({ currentA: 1, distanceM: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(wireFieldUt({ currentA: 1, distanceM: 0.001, pairSpacingM: 0.004 })).toBe(Number.POSITIVE_INFINITY);
    expect(tailLoopFieldUt({ currentA: 1, loopAreaM2: 0.001, distanceM: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(compassDeviation({ fieldUt: Number.POSITIVE_INFINITY, horizontalUt: 20 })).toEqual({
      squareDeg: 90,
      worstDeg: 180,
    });
    expect(wireFieldUt({ currentA: 0, distanceM: 0 })).toBe(0);
    expect(tailLoopFieldUt({ currentA: 0, loopAreaM2: 0.001, distanceM: 0 })).toBe(0);
  });
});

describe('the safe distance of a wire', () => {
  const iso = 'IEC 60945 cl. 11.2 and ISO 25862, second-hand; computed';
  it.each([
    ['PW-81', iso, 5, 'steering', undefined, 0.3142, 3.183, 3.2],
    ['PW-82', iso, 5, 'steering', 0.004, 0.3142, 0.113, 0.15],
    ['PW-83', iso, 10, 'standard', 0.02, 0.0942, 0.651, 0.7],
    ['PW-84', iso, 3, 'standard', undefined, 0.0942, 6.366, 6.4],
  ] as const)(
    '%s (%s): %i A from a %s compass, wires %s m apart: %f µT at %f m, printed as %f m',
    (_id, _source, currentA, compass, pairSpacingM, limitFieldUt, distanceM, shownM) => {
      const found = compassSafeDistance({ currentA, compass, ...(pairSpacingM === undefined ? {} : { pairSpacingM }) });
      near(found.limitFieldUt, limitFieldUt);
      near(found.distanceM, distanceM);
      expect(found.shownM).toBe(shownM);
    },
  );

  it.each([
    [1, 2.1, 0.64, 0.09, 0.05, 0.21, 0.11],
    [5, 10.6, 3.2, 0.21, 0.11, 0.46, 0.25],
    [10, 21, 6.4, 0.29, 0.16, 0.65, 0.36],
    [20, 42, 12.7, 0.41, 0.23, 0.92, 0.5],
  ])(
    'of %i A is as the table of singles, pairs of 4 mm and of 20 mm prints it (%f, %f; %f, %f; %f, %f m; computed)',
    (currentA, ...printed) => {
      const spacings = [undefined, 0.004, 0.02];
      const found = spacings.flatMap((spacing) =>
        (['standard', 'steering'] as const).map(
          (compass) =>
            compassSafeDistance({ currentA, compass, ...(spacing === undefined ? {} : { pairSpacingM: spacing }) })
              .distanceM,
        ),
      );
      for (const [at, metres] of found.entries()) expect(Math.abs(metres / (printed[at] ?? 0) - 1)).toBeLessThan(0.06);
    },
  );

  it('is just where the field has fallen to what is allowed; deviation falls with distance, and a pair turns less than a single wire', () => {
    const amps = fc.double({ min: 0.1, max: 60, noNaN: true });
    const spacing = fc.double({ min: 0.002, max: 0.05, noNaN: true });
    const some = fc.double({ min: 1, max: 10, noNaN: true });
    fc.assert(
      fc.property(amps, spacing, some, some, fc.boolean(), (currentA, pairSpacingM, times, further, single) => {
        const laid = single ? {} : { pairSpacingM };
        const safe = compassSafeDistance({ currentA, compass: 'steering', ...laid });
        expect(wireFieldUt({ currentA, distanceM: safe.distanceM, ...laid })).toBeCloseTo(safe.limitFieldUt, 9);
        expect(safe.shownM).toBeGreaterThanOrEqual(safe.distanceM - 1e-9);
        const distanceM = pairSpacingM * times;
        const degAt = (atM: number, how: { readonly pairSpacingM?: number }) =>
          compassDeviation({ fieldUt: wireFieldUt({ currentA, distanceM: atM, ...how }), horizontalUt: 15 }).squareDeg;
        expect(degAt(distanceM * further, laid)).toBeLessThanOrEqual(degAt(distanceM, laid));
        expect(degAt(distanceM * 2, { pairSpacingM })).toBeLessThanOrEqual(degAt(distanceM * 2, {}));
      }),
    );
  });
});
