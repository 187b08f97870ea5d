import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthFigures } from '../../facts/depth-figures.ts';
import { depthAtSoundSpeed } from './depth-at-sound-speed.ts';
import { depthBelow } from './depth-below.ts';
import { depthOffsets } from './depth-offsets.ts';
import { heelFactor } from './heel-factor.ts';
import { offsetReference } from './offset-reference.ts';
import { offsetTwice } from './offset-twice.ts';
import { rawDepthOffset } from './raw-depth-offset.ts';

const tern = { draftM: 1.95, transducerBelowWaterM: 0.6 };
const manuals = 'NMEA 2000 PGN 128267 and NMEA 0183 DPT offset sign, as public sensor manuals state it, second-hand';

describe('depth offsets', () => {
  it(`TD-01 (${manuals}): draft 1.95 m, transducer 0.60 m down, sounding 4.00 m`, () => {
    const { surfaceM, keelM } = depthOffsets(tern);
    expect(surfaceM).toBeCloseTo(0.6, 9);
    expect(keelM).toBeCloseTo(-1.35, 9);
    const below = depthBelow({ depthM: 4, from: 'transducer', ...tern });
    expect(below.surfaceM).toBeCloseTo(4.6, 9);
    expect(below.keelM).toBeCloseTo(2.65, 9);
    expect(below.surfaceM - tern.draftM).toBeCloseTo(below.keelM, 9);
    expect(rawDepthOffset(keelM)?.raw).toBe(-1350);
  });

  it(`TD-02 and TD-03 (${manuals}): ±2.5 m as raw number and as sixteen bits`, () => {
    expect(rawDepthOffset(2.5)).toEqual({ raw: 2500, hex: '09C4' });
    expect(rawDepthOffset(-2.5)).toEqual({ raw: -2500, hex: 'F63C' });
  });

  it(`TD-10 (${manuals}): +0.6 is to the surface, -1.35 to the keel, 0 to the transducer`, () => {
    expect([0.6, -1.35, 0].map(offsetReference)).toEqual(['surface', 'keel', 'transducer']);
  });

  it('TD-04 (arithmetic, computed): -1.35 m in the sensor and again in the display shows 1.30 for 2.65 m', () => {
    const { shownM, finding } = offsetTwice({ depthM: 2.65, sensorOffsetM: -1.35, displayOffsetM: -1.35 });
    expect(shownM).toBeCloseTo(1.3, 9);
    expect(finding).toBe('double offset');
  });

  it('one offset alone is right, two that differ are told apart from one entered twice', () => {
    expect(offsetTwice({ depthM: 2.65, sensorOffsetM: -1.35, displayOffsetM: 0 })).toEqual({ shownM: 2.65 });
    expect(offsetTwice({ depthM: 2.65, sensorOffsetM: -1.35, displayOffsetM: -1.355 }).finding).toBe('double offset');
    expect(offsetTwice({ depthM: 2.65, sensorOffsetM: -1.35, displayOffsetM: 0.6 }).finding).toBe('two offsets');
  });

  it('TD-09 (arithmetic, computed): an alarm at 0.8 m below the keel is 2.75 m below the surface, 2.15 m below the transducer', () => {
    const below = depthBelow({ depthM: 0.8, from: 'keel', ...tern });
    expect(below.surfaceM).toBeCloseTo(2.75, 9);
    expect(below.transducerM).toBeCloseTo(2.15, 9);
  });

  it('an offset that does not fit into sixteen bits has no raw number', () => {
    expect(rawDepthOffset(32.764)?.raw).toBe(32_764);
    for (const offsetM of [32.765, -32.769, Number.NaN]) expect(rawDepthOffset(offsetM)).toBeUndefined();
    expect(rawDepthOffset(-0.0001)).toEqual({ raw: 0, hex: '0000' });
  });

  it('whatever the boat: a depth turned into another reference and back is the same, and its offsets have the sign of their reference', () => {
    const metre = fc.integer({ min: 1, max: 9000 }).map((mm) => mm / 1000);
    const from = fc.constantFrom('surface' as const, 'transducer' as const, 'keel' as const);
    fc.assert(
      fc.property(metre, metre, metre, from, from, (t, belowIt, depthM, one, other) => {
        const boat = { draftM: t + belowIt, transducerBelowWaterM: t };
        const found = depthBelow({ depthM, from: one, ...boat });
        const back = depthBelow({ depthM: found[`${other}M`], from: other, ...boat });
        expect(back[`${one}M`]).toBeCloseTo(depthM, 9);
        const { surfaceM, keelM } = depthOffsets(boat);
        expect([offsetReference(surfaceM), offsetReference(keelM)]).toEqual(['surface', 'keel']);
        const raw = rawDepthOffset(keelM);
        const bits = Number.parseInt(raw?.hex ?? '', 16);
        expect(((bits ^ 0x8000) - 0x8000) / 1000).toBeCloseTo(keelM, 9);
      }),
    );
  });
});

describe('a sounding', () => {
  it('TD-05 (echo time; 1466 m/s for fresh water at 15 °C from memory, computed): 4 m of fresh water show as 4.09 m', () => {
    const { soundSpeedSet, soundSpeedFresh } = depthFigures;
    const found = depthAtSoundSpeed({ trueM: 4, setMPerS: soundSpeedSet.value, actualMPerS: soundSpeedFresh.value });
    expect(found.shownM).toBeCloseTo(4.0928, 4);
    expect(found.errorPct).toBeCloseTo(2.3192, 3);
  });

  it('TD-06 (geometry, computed): heeled by 20° it is 1.0642 times the depth', () => {
    expect(heelFactor(20)).toBeCloseTo(1.0642, 4);
    expect(heelFactor(0)).toBe(1);
  });
});
