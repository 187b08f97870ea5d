import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coupledDbm, isolationOf, levelDistanceM, sideBySideDb, stackedDb, wattsOfDbm } from './isolation.ts';
import { aisVerdict, positionVerdict } from './spacing-verdict.ts';

const mhz = 156.8;
const dipoles = [2.15, 2.15] as const;
const bare = [0, 0] as const;
const near = (value: number, wanted: number, within: number): void =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(within);

describe('isolation by the rules of thumb of radio sites (practice)', () => {
  it('one above the other: 34.7 dB at 3 m (AN-01), 28.8 dB at 2 m (AN-02)', () => {
    near(stackedDb({ mhz: 147, upM: 3 }), 34.705, 0.1);
    near(stackedDb({ mhz, upM: 2 }), 28.782, 0.1);
  });

  it('side by side: two dipoles 32.1 dB at 10 m (AN-03), no gain 25.9 dB at 3 m (AN-04)', () => {
    near(sideBySideDb({ mhz, acrossM: 10, gainsDbi: dipoles }), 32.071, 0.1);
    near(sideBySideDb({ mhz, acrossM: 3, gainsDbi: bare }), 25.913, 0.1);
  });

  it('AN-05: 2 m of height is worth 4.17 m sideways, 6.85 m with two dipoles', () => {
    const upDb = stackedDb({ mhz, upM: 2 });
    near(levelDistanceM(upDb, { mhz, gainsDbi: bare }), 4.1743, 0.05);
    near(levelDistanceM(upDb, { mhz, gainsDbi: dipoles }), 6.8483, 0.05);
  });

  it('AN-06: 25 W into two dipoles 1 m apart put 1.55 W on the other receiver, by estimate', () => {
    const { isolationDb, isEstimate } = isolationOf({ mhz, acrossM: 1, upM: 0, gainsDbi: dipoles });
    near(coupledDbm(25, isolationDb), 31.909, 0.1);
    near(wattsOfDbm(coupledDbm(25, isolationDb)), 1.552, 0.05);
    expect(isEstimate).toBe(true);
  });

  it('AN-07: below a wavelength of 1.91 m a figure is an estimate', () => {
    const estimates = [1, 1.9, 2].map((acrossM) => isolationOf({ mhz, acrossM, upM: 0, gainsDbi: bare }).isEstimate);
    expect(estimates).toEqual([true, true, false]);
  });

  it('AN-10: on a slant of 6 m and 15 m 55.0 dB, always an estimate', () => {
    const { how, isolationDb, isEstimate } = isolationOf({ mhz, acrossM: 6, upM: 15, gainsDbi: dipoles });
    near(isolationDb, 55.028, 0.2);
    expect([how, isEstimate]).toEqual(['slant', true]);
  });
});

describe('the guideline for ships, graded and never failed (IMO SN/Circ.227 as amended by SN/Circ.245, 2.2.1)', () => {
  const limits = { shipM: 10, shipUpM: 2, apartM: 3 };
  const heard = { isolationDb: 20, levelDb: 32 };
  it('4 m on one level is advice (AN-08), 2.5 m straight above meets it (AN-09), and so do 10 m on one level', () => {
    expect(aisVerdict({ distanceM: 4, acrossM: 4, upM: 0, ...heard }, limits)).toEqual({
      verdict: 'advice',
      limitM: 10,
    });
    expect(aisVerdict({ distanceM: 2.5, acrossM: 0, upM: 2.5, ...heard }, limits).verdict).toBe('ok');
    expect(aisVerdict({ distanceM: 10, acrossM: 10, upM: 0, ...heard }, limits).verdict).toBe('ok');
    expect(aisVerdict({ distanceM: 0.8, acrossM: 0.8, upM: 0, ...heard }, limits)).toEqual({
      verdict: 'doubt',
      limitM: 3,
    });
  });

  it('on a slant what parts them as well as ten metres on one level meets it too', () => {
    const slant = { distanceM: 9.5, acrossM: 8.7, upM: 4.8, levelDb: 32 };
    expect(aisVerdict({ ...slant, isolationDb: 33 }, limits).verdict).toBe('ok');
    expect(aisVerdict({ ...slant, isolationDb: 31 }, limits).verdict).toBe('advice');
  });

  it('AN-11: a position antenna 2.5, 4 and 5 m from one that sends', () => {
    const verdicts = [2.5, 4, 5].map((distanceM) => positionVerdict(distanceM, { warnM: 3, adviceM: 5 }).verdict);
    expect(verdicts).toEqual(['doubt', 'advice', 'ok']);
  });
});

it('farther apart is never worse', () => {
  const distance = fc.double({ min: 2, max: 30, noNaN: true });
  fc.assert(
    fc.property(distance, distance, fc.double({ min: 1, max: 3, noNaN: true }), (acrossM, upM, more) => {
      const one = isolationOf({ mhz, acrossM, upM, gainsDbi: dipoles }).isolationDb;
      const other = isolationOf({ mhz, acrossM: acrossM * more, upM: upM * more, gainsDbi: dipoles }).isolationDb;
      expect(other).toBeGreaterThanOrEqual(one - 1e-9);
    }),
  );
});
