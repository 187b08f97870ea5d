import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cableGrades } from '../facts/cable-grades.ts';
import { awgAreaMm2 } from '../units/awg.ts';
import { copperOhmPerM } from './copper-ohm.ts';

describe('BB-20, copper resistance from the gauge (resistivity 0.017241 ohm mm²/m, IEC 60028)', () => {
  it.each([
    [16, 13.17],
    [18, 20.95],
    [20, 33.31],
    [22, 52.96],
    [24, 84.21],
  ])('%d AWG is %d mohm/m', (awg, mohmPerM) => {
    expect(Math.abs(copperOhmPerM({ areaMm2: awgAreaMm2(awg) }) * 1000 - mohmPerM)).toBeLessThanOrEqual(0.01);
  });
});

describe('BB-21, temperature (coefficient 0.00393 per K at 20 C, IEC 60028)', () => {
  it('makes copper at 60 C resist 1.1572 times as much', () => {
    const factor = copperOhmPerM({ areaMm2: 1, tempC: 60 }) / copperOhmPerM({ areaMm2: 1 });
    expect(Math.abs(factor - 1.1572)).toBeLessThanOrEqual(0.0001);
  });
});

describe('copper', () => {
  it('resists less the thicker and the colder it is', () => {
    const area = fc.integer({ min: 1, max: 1000 }).map((tenths) => tenths / 10);
    const temp = fc.integer({ min: -40, max: 100 });
    fc.assert(
      fc.property(area, temp, (areaMm2, tempC) => {
        const ohm = copperOhmPerM({ areaMm2, tempC });
        expect(copperOhmPerM({ areaMm2: areaMm2 * 1.1, tempC })).toBeLessThan(ohm);
        expect(copperOhmPerM({ areaMm2, tempC: tempC - 1 })).toBeLessThan(ohm);
      }),
    );
  });
});

describe('BB-19, a resistance that cannot belong to its gauge (Omron and cable data sheets: 0.053 to 0.0574 for 22 AWG)', () => {
  it('is caught by the range of its grade: 0.0057 ohm/m for light cable is a lost decimal', () => {
    const { powerOhmLeastPerM, powerOhmMostPerM } = cableGrades.light;
    expect(0.0057).toBeLessThan(powerOhmLeastPerM.value);
    expect(0.057).toBeGreaterThan(powerOhmLeastPerM.value);
    expect(0.057).toBeLessThan(powerOhmMostPerM.value);
  });

  it('is nowhere among our own figures: each lies in its range and within a fifth of the theory for its gauge', () => {
    for (const grade of Object.values(cableGrades)) {
      expect(grade.powerOhmPerM.value).toBeGreaterThan(grade.powerOhmLeastPerM.value);
      expect(grade.powerOhmPerM.value).toBeLessThan(grade.powerOhmMostPerM.value);
      const powerTheory = copperOhmPerM({ areaMm2: awgAreaMm2(grade.powerAwg.value) });
      expect(Math.abs(grade.powerOhmPerM.value / powerTheory - 1)).toBeLessThan(0.2);
      const dataTheory = copperOhmPerM({ areaMm2: awgAreaMm2(grade.dataAwg.value) });
      expect(Math.abs(grade.dataOhmPerM.value / dataTheory - 1)).toBeLessThan(0.2);
    }
  });
});
