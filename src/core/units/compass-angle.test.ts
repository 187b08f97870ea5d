import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesOfRadians, trueBearingDeg } from './compass-angle.ts';
import { knotsOfMetresPerSecond } from './knots.ts';

describe('what the bus says in radians and m/s', () => {
  it('is 132.7 degrees for a heading of 2.3154 rad, within 0.05 of it (MS-82, arithmetic)', () => {
    const degrees = degreesOfRadians(2.3154);
    expect(degrees.toFixed(1)).toBe('132.7');
    expect(Math.abs(degrees - 132.7)).toBeLessThanOrEqual(0.05);
  });

  it('is 6.10 knots for a speed of 3.14 m/s (MS-83, 1 kn = 1852/3600 m/s)', () => {
    expect(knotsOfMetresPerSecond(3.14).toFixed(2)).toBe('6.10');
    expect(knotsOfMetresPerSecond(1852 / 3600)).toBeCloseTo(1, 12);
  });
});

describe('a true bearing', () => {
  it('is 128.5 where the compass says 132.7 and the variation is 4.2 W (MS-88, true = magnetic + variation, east positive)', () => {
    expect(trueBearingDeg({ magneticDeg: 132.7, variationDeg: -4.2 })).toBeCloseTo(128.5, 9);
  });

  it('stays between 0 and 360 across north, and the variation taken back gives the magnetic one', () => {
    expect(trueBearingDeg({ magneticDeg: 358, variationDeg: 5 })).toBeCloseTo(3, 9);
    expect(trueBearingDeg({ magneticDeg: 2, variationDeg: -5 })).toBeCloseTo(357, 9);
    const whole = fc.record({
      magneticDeg: fc.integer({ min: 0, max: 359 }),
      variationDeg: fc.integer({ min: -180, max: 180 }),
    });
    fc.assert(
      fc.property(whole, ({ magneticDeg, variationDeg }) => {
        const trueDeg = trueBearingDeg({ magneticDeg, variationDeg });
        expect(trueDeg).toBeGreaterThanOrEqual(0);
        expect(trueDeg).toBeLessThan(360);
        expect(trueBearingDeg({ magneticDeg: trueDeg, variationDeg: -variationDeg })).toBe(magneticDeg);
      }),
    );
  });
});
