import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  depthUnitM,
  fathomM,
  footM,
  metresOfDepth,
  nauticalMileM,
  type SpeedUnit,
  speedIn,
  speedUnitMS,
} from './sea-units.ts';

describe('units of depth and speed at sea (exact by definition)', () => {
  it('UN-01: two fathoms and three feet are 4.572 m', () => {
    expect(metresOfDepth({ fathoms: 2, feet: 3 })).toBeCloseTo(4.572, 6);
  });

  it('UN-02: 6.5 ft are 1.9812 m', () => {
    expect(metresOfDepth({ feet: 6.5 })).toBeCloseTo(1.9812, 6);
    expect(6.5 * depthUnitM.ft).toBeCloseTo(1.9812, 6);
  });

  it('UN-03, UN-06: a knot is 0.51444 m/s, and 1 m/s is 1.9438 knots', () => {
    expect(speedUnitMS.kn).toBeCloseTo(0.514444, 5);
    expect(speedIn({ speed: 1, from: 'm/s', to: 'kn' })).toBeCloseTo(1.943844, 5);
  });

  it('UN-04: a statute mile an hour is 0.86898 knots', () => {
    expect(speedIn({ speed: 1, from: 'mph', to: 'kn' })).toBeCloseTo(0.868976, 5);
  });

  it('UN-05: a nautical mile is 6076.1 ft, or 1012.7 fathoms', () => {
    expect(Math.abs(nauticalMileM / footM - 6076.1)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(nauticalMileM / fathomM - 1012.7)).toBeLessThanOrEqual(0.02);
  });

  it('come back as they went, whichever units a speed passes through', () => {
    const unit = fc.constantFrom<SpeedUnit>('kn', 'mph', 'km/h', 'm/s');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), unit, unit, (speed, from, to) => {
        expect(speedIn({ speed: speedIn({ speed, from, to }), from: to, to: from })).toBeCloseTo(speed, 9);
      }),
    );
  });
});
