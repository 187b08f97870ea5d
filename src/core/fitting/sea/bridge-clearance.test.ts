import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bridge, clearanceAt, highestTide } from './bridge-clearance.ts';

const bridge: Bridge = { charted: 17, datum: 'hat', datumAbove: 5.6, airDraft: 16.4, margin: 1 };

describe('a bridge at a tide (practice: the level is read off the chart)', () => {
  it('AD-02: 17 m over HAT of 5.6 m, at a tide of 1.8 m: 20.8 m free, 4.4 to spare', () => {
    const found = clearanceAt(bridge, 1.8);
    expect(found?.clearance).toBeCloseTo(20.8, 3);
    expect(found?.spare).toBeCloseTo(4.4, 3);
  });

  it('AD-03: with a metre kept free the highest tide she passes at is 5.2 m', () => {
    expect(highestTide(bridge)).toBeCloseTo(5.2, 3);
  });

  it('AD-04: 65 ft over MHW of 4.2 ft: 68.2 ft at a tide of 1 ft, 63.2 ft, less than charted, at one of 6', () => {
    const road: Bridge = { charted: 65, datum: 'mhw', datumAbove: 4.2, airDraft: 55, margin: 3 };
    expect(clearanceAt(road, 1)?.clearance).toBeCloseTo(68.2, 3);
    expect(clearanceAt(road, 6)?.clearance).toBeCloseTo(63.2, 3);
  });

  it('AD-06: without the level its chart counts from nothing is computed', () => {
    const { datum: _, ...unnamed } = bridge;
    expect(clearanceAt(unnamed, 1.8)).toBeUndefined();
    expect(highestTide(unnamed)).toBeUndefined();
  });

  it('leaves just the margin at the highest tide, and less the higher the tide', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
    fc.assert(
      fc.property(
        tenths(50, 400),
        tenths(0, 80),
        tenths(30, 300),
        tenths(0, 30),
        (charted, datumAbove, airDraft, margin) => {
          const one: Bridge = { charted, datum: 'mhws', datumAbove, airDraft, margin };
          const tide = highestTide(one) ?? Number.NaN;
          expect(clearanceAt(one, tide)?.spare).toBeCloseTo(margin, 9);
          expect(clearanceAt(one, tide + 1)?.spare).toBeCloseTo(margin - 1, 9);
        },
      ),
    );
  });
});
