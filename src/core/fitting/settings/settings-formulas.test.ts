import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airDraft } from './air-draft.ts';
import { aisName } from './ais-name.ts';
import { aisDraughtField, aisSize, aisSizeFields, aisSizeMeaning } from './ais-size.ts';
import { isDraftInFeet, unitSlip } from './feet-for-metres.ts';
import { safeDepthM } from './safe-depth.ts';

const part = (valueM: number, unit?: string) => ({
  id: `part-${valueM}`,
  name: 'part',
  length: { valueM, how: 'taped' as const },
  ...(unit === undefined ? {} : { unit }),
});

describe('the air draft (sum)', () => {
  it('AD-01: 1.2, 0.3, 13.7, 0.2 and 1.0 m are 16.4 m', () => {
    const parts = [1.2, 0.3, 13.7, 0.2, 1].map((valueM) => part(valueM));
    expect(airDraft(parts, () => true).sumM).toBeCloseTo(16.4, 9);
  });

  it('counts of what stands on top the highest only, and only while it is aboard', () => {
    const parts = [part(13), part(0.4, 'vane'), part(1, 'whip')];
    expect(airDraft(parts, () => true).sumM).toBeCloseTo(14, 9);
    expect(airDraft(parts, (unit) => unit === 'vane').sumM).toBeCloseTo(13.4, 9);
    expect(airDraft(parts, () => false).top).toBeUndefined();
  });
});

it('AD-05: a draft of 1.95 m with 0.3 m for waves and 0.5 m of doubt wants 2.75 m of water (practice)', () => {
  expect(safeDepthM({ draftM: 1.95, wavesM: 0.3, doubtM: 0.5 })).toBeCloseTo(2.75, 9);
});

describe('the size block of the AIS (ITU-R M.1371-5, second-hand; the rounding is ours)', () => {
  it('AI-01: 12.4 by 3.9 m with the antenna 9.8 m from the bow and 1.9 m from port is 10, 2, 2, 2', () => {
    expect(aisSize({ lengthM: 12.4, beamM: 3.9, fromBowM: 9.8, fromPortM: 1.9 })).toEqual({
      bowM: 10,
      sternM: 2,
      portM: 2,
      starboardM: 2,
    });
  });

  it('AI-02, AI-03: A and C of 0 mean that the antenna is not known; all four that nothing is', () => {
    expect(aisSizeMeaning({ bowM: 0, sternM: 12, portM: 0, starboardM: 4 })).toBe('size-only');
    expect(aisSizeMeaning({ bowM: 0, sternM: 0, portM: 0, starboardM: 0 })).toBe('nothing');
  });

  it('AI-06: a draft of 1.95 m is 20 tenths, rounded up (USCG NAVCEN, message 5)', () => {
    expect(aisDraughtField(1.95)).toBe(20);
    expect(aisDraughtField(1.9)).toBe(19);
    expect(aisDraughtField(40)).toBe(255);
  });

  it('AI-07: what no field can hold is held at its greatest, 511 and 63 m', () => {
    expect(aisSizeFields({ bowM: 600, sternM: 0, portM: 70, starboardM: 0 })).toMatchObject({ bowM: 511, portM: 63 });
  });

  it('always says where the antenna is, and keeps length and beam', () => {
    const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
    fc.assert(
      fc.property(tenths(20, 400), tenths(10, 120), fc.nat(100), fc.nat(100), (lengthM, beamM, bowPct, portPct) => {
        const fromBowM = (lengthM * bowPct) / 100;
        const size = aisSize({ lengthM, beamM, fromBowM, fromPortM: (beamM * portPct) / 100 });
        expect(aisSizeMeaning(size)).toBe('whole');
        expect(size.bowM + size.sternM).toBe(Math.floor(lengthM + 0.5));
        expect(size.portM + size.starboardM).toBe(Math.floor(beamM + 0.5));
      }),
    );
  });
});

describe('the name in the AIS (USCG AIS Encoding Guide v.25)', () => {
  it('AI-04: of a name of 21 letters the first 15 and the last 4 are kept', () => {
    expect(aisName('THE GRAND JOLLY ROGER')).toBe('THE GRAND JOLLY_OGER');
  });

  it('AI-05: a prefix is dropped', () => {
    expect(aisName('S/V TURNSTONE')).toBe('TURNSTONE');
  });

  it('is written in the alphabet of the field, 20 characters at most', () => {
    expect(aisName('Möwe «am» Heck')).toBe('MOWE AM HECK');
    fc.assert(
      fc.property(fc.string(), (name) => {
        expect(aisName(name)).toMatch(/^[ -_]{0,20}$/);
      }),
    );
  });
});

describe('feet typed as metres (our own rule)', () => {
  it('UN-07: a draft of 6.5 on a boat of 11 m must be feet', () => {
    expect(isDraftInFeet({ lengthM: 11, draftM: 6.5 })).toBe(true);
    expect(isDraftInFeet({ lengthM: 11, draftM: 1.98 })).toBe(false);
  });

  it('is seen by the ratio, in either direction, and not where a figure is merely off', () => {
    const lengths = fc.integer({ min: 1, max: 300 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(lengths, (wantedM) => {
        expect(unitSlip({ typedM: wantedM / 0.3048, wantedM })).toBe('feet-as-metres');
        expect(unitSlip({ typedM: -wantedM * 0.3048, wantedM })).toBe('metres-as-feet');
        expect(unitSlip({ typedM: wantedM * 1.5, wantedM })).toBeUndefined();
      }),
    );
    expect(unitSlip({ typedM: 3, wantedM: 0 })).toBeUndefined();
  });
});
