import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cableGrades } from '../facts/cable-grades.ts';
import { type DcLoad, solveDc } from './dc-solve.ts';
import type { DcEdge } from './dc-tree.ts';
import { ampsOfLen, lenOf } from './len-of.ts';
import { ruleOfThumb } from './rule-of-thumb.ts';

const light = cableGrades.light.powerOhmPerM.value;
const mid = cableGrades.mid.powerOhmPerM.value;

describe('the rule of thumb for volts lost', () => {
  it('BB-09, end feed: LEN 16 over 38 m loses 3.2224 V, over 3.0 V (a boat-equipment maker’s handbook, name withheld; arithmetic redone)', () => {
    const stretches = [2, 20 + 10, 6].map((lengthM) => ({ lengthM, ohmPerM: 0.053 }));
    expect(Math.abs(ruleOfThumb({ len: 4 + 5 + 7, stretches }) - 3.2224)).toBeLessThanOrEqual(0.0005);
  });

  it.each([
    [14, 1.1172],
    [18, 1.4364],
  ])('BB-12, a 14 m boat: LEN 14 over %d m of light cable loses %d V (computed)', (lengthM, dropV) => {
    expect(Math.abs(ruleOfThumb({ len: 14, stretches: [{ lengthM, ohmPerM: light }] }) - dropV)).toBeLessThan(0.0005);
  });

  it('BB-13, 20 m of light trunk: 13 LEN at its end keep to 1.5 V, 14 do not (computed)', () => {
    const stretches = [{ lengthM: 20, ohmPerM: light }];
    expect(ruleOfThumb({ len: 13.16, stretches })).toBeCloseTo(1.5, 3);
    expect(ruleOfThumb({ len: 13, stretches })).toBeLessThan(1.5);
    expect(ruleOfThumb({ len: 14, stretches })).toBeGreaterThan(1.5);
  });

  it('BB-14, 30 m of mid trunk: 70.4 LEN keep to 3.0 V, but a 3 A plug stops at 60 (computed)', () => {
    expect(ruleOfThumb({ len: 70.4, stretches: [{ lengthM: 30, ohmPerM: mid }] })).toBeCloseTo(3, 2);
    expect(lenOf(cableGrades.light.currentA.value)).toBe(60);
  });

  it.each([
    [1.5, 263.2],
    [1.67, 293.0],
    [3.0, 526.3],
  ])('BB-15, %d V on light cable is a budget of %d LEN-metres (computed)', (allowedV, lenMetres) => {
    const oneLenMetre = ruleOfThumb({ len: 1, stretches: [{ lengthM: 1, ohmPerM: light }] });
    expect(Math.abs(allowedV / oneLenMetre - lenMetres)).toBeLessThanOrEqual(0.05);
  });

  it('never reads lower than the exact answer, and the same for a single device', () => {
    const stops = fc.array(
      fc.record({ len: fc.integer({ min: 1, max: 20 }), stretchM: fc.integer({ min: 0, max: 30 }) }),
      {
        minLength: 1,
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(stops, (legs) => {
        const edges = legs.map(
          ({ stretchM }, n): DcEdge => ({ id: `e${n}`, from: `n${n}`, to: `n${n + 1}`, loopOhm: 2 * stretchM * mid }),
        );
        const loads = legs.map(
          ({ len }, n): DcLoad => ({ node: `n${n + 1}`, behaves: 'current', amps: ampsOfLen(len) }),
        );
        const exact = solveDc({ source: 'n0', sourceV: 1000, edges, loads });
        if (!exact.solved) throw new Error('1000 V are enough for this');
        const exactV = 1000 - (exact.voltsAt.get(`n${legs.length}`) ?? Number.NaN);
        const len = legs.reduce((sum, leg) => sum + leg.len, 0);
        const thumbV = ruleOfThumb({
          len,
          stretches: legs.map(({ stretchM }) => ({ lengthM: stretchM, ohmPerM: mid })),
        });
        expect(thumbV).toBeGreaterThanOrEqual(exactV - 1e-9);
        if (legs.length === 1) expect(thumbV).toBeCloseTo(exactV, 9);
      }),
    );
  });
});
