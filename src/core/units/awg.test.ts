import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2, awgDiameterMm } from './awg.ts';
import { ohmPerMOfPer1000Ft } from './ohm-per-1000-ft.ts';

describe('a wire gauge', () => {
  it('is 0.127 mm at number 36 and 0.46 in at number 4/0, the two fixed points of its definition', () => {
    expect(awgDiameterMm(36)).toBeCloseTo(0.127, 12);
    expect(awgDiameterMm(-3)).toBeCloseTo(0.46 * 25.4, 10);
  });

  it('gives an area that shrinks as the number grows', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3, max: 39 }), (awg) => {
        expect(awgAreaMm2(awg)).toBeGreaterThan(awgAreaMm2(awg + 1));
      }),
    );
    expect(awgAreaMm2(16)).toBeCloseTo(1.309, 3);
  });
});

describe('BB-22, resistance printed per 1000 ft (Omron, DeviceNet Operation Manual)', () => {
  it.each([
    [17.5, 57.41],
    [28, 91.86],
  ])('%d ohm per 1000 ft is %d mohm/m', (ohmPer1000Ft, mohmPerM) => {
    expect(Math.abs(ohmPerMOfPer1000Ft(ohmPer1000Ft) * 1000 - mohmPerM)).toBeLessThanOrEqual(0.01);
  });
});
