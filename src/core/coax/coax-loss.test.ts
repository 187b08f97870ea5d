import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coaxJoints, coaxKindIds, coaxKinds, coaxLimits, radioMhz } from '../facts/coax.ts';
import { dbPer100M, dbPer100MByName, longestRunM, lossByPoints, rangeShare, wattsAfter } from './coax-loss.ts';
import { coaxVerdict } from './coax-verdict.ts';

const voiceMhz = radioMhz.voice.value;
const limits = {
  newAimDb: coaxLimits.newAim.value,
  newMostDb: coaxLimits.newFaultAbove.value,
  keptMostDb: coaxLimits.keptDoubtAbove.value,
};

const run = (kind: (typeof coaxKindIds)[number], jointDb: number) => {
  const cableDb = ((dbPer100M(kind, voiceMhz) ?? 0) * 25) / 100;
  return { cableDb, totalDb: cableDb + 4 * jointDb, powerW: wattsAfter(25, cableDb + 4 * jointDb) };
};
const near = (value: number, wanted: number, within: number): void =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(within);

describe('what 25 m of coax with four joints leave of 25 W', () => {
  it.each([
    // table points, log-log, and data sheet constants (second-hand); joints by practice
    ['CX-13', 'rg-58c-u', coaxJoints.weathered.value, 5.1171, 6.1171, 6.1126],
    ['CX-14', 'low-loss-foam-10-mm', coaxJoints.weathered.value, 1.2894, 2.2894, 14.757],
    ['CX-25', 'rg-213-u', coaxJoints.sound.value, 2.28, 2.48, 14.123],
    ['CX-26', 'low-loss-foam-10-mm', coaxJoints.sound.value, 1.2894, 1.4894, 17.742],
    ['CX-27', 'rg-58c-u', coaxJoints.sound.value, 5.1171, 5.3171, 7.349],
  ] as const)('%s: %s', (_id, kind, jointDb, cableDb, totalDb, powerW) => {
    const got = run(kind, jointDb);
    near(got.cableDb, cableDb, 0.02);
    near(got.totalDb, totalDb, 0.02);
    near(got.powerW, powerW, 0.1);
  });

  it('CX-07: 9.07 dB in 100 m and weathered joints: 3.2675 dB, 11.78 W or 47 % arrive (definition of the decibel)', () => {
    const totalDb = (9.07 * 25) / 100 + 4 * coaxJoints.weathered.value;
    near(totalDb, 3.2675, 0.005);
    near(wattsAfter(25, totalDb), 11.781, 0.05);
    near(wattsAfter(100, totalDb), 47.125, 0.2);
  });
});

it('a break at the mast is two joints: 0.5 dB weathered (MR-06), 0.1 dB sound (MR-10), by practice', () => {
  expect([2 * coaxJoints.weathered.value, 2 * coaxJoints.sound.value]).toEqual([0.5, 0.1]);
});

it.each([
  ['CX-16, weathered joints', coaxJoints.weathered.value, 12.658],
  ['CX-28, sound joints', coaxJoints.sound.value, 17.721],
])('RG-8X with four joints keeps 3 dB to some length: %s', (_id, jointDb, longestM) => {
  const per = dbPer100M('rg-8x', voiceMhz) ?? 0;
  near(longestRunM({ dbPer100M: per, joints: 4, jointDb, mostDb: 3 }), longestM, 0.1);
});

it('CX-17: 40 % lost in 15 m is 14.79 dB in 100 m (Offshore Special Regulations 2012-13, 3.29, guidance lengths)', () => {
  near((-10 * Math.log10(1 - 0.4) * 100) / 15, 14.79, 0.05);
});

it('new coax is judged by 2.2 and 3 dB (CX-15), kept coax by 3 dB and never a fault (CX-30)', () => {
  const of = (use: 'new' | 'kept') => (totalDb: number) => coaxVerdict({ use, totalDb }, limits);
  expect([2.1, 2.29, 3.27].map(of('new'))).toEqual(['ok', 'advice', 'fault']);
  expect([2.1, 2.29, 3.27, 6.1].map(of('kept'))).toEqual(['ok', 'ok', 'doubt', 'doubt']);
});

it('CX-31: 1, 3 and 4 dB keep 0.944, 0.841 and 0.794 of the range of a weak signal (plane-earth law, computed)', () => {
  for (const [db, share] of [
    [1, 0.94406],
    [3, 0.8414],
    [4, 0.79433],
  ] as const)
    near(rangeShare(db), share, 0.0005);
});

it('one point serves within a factor of two and not beyond', () => {
  expect(lossByPoints([[100, 10]], 200)).toBeCloseTo(14.142, 3);
  expect(lossByPoints([[100, 10]], 201)).toBeUndefined();
  expect(lossByPoints([[100, 10]], 49)).toBeUndefined();
});

it('a cable known by its name never loses less than the worst print', () => {
  for (const id of coaxKindIds) expect(dbPer100MByName(id, voiceMhz)).toBe(coaxKinds[id].byName.dbPer100M);
});

it('more of anything never helps', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...coaxKindIds),
      fc.double({ min: 60, max: 400, noNaN: true }),
      fc.double({ min: 1.01, max: 2, noNaN: true }),
      (kind, mhz, more) => {
        expect(dbPer100M(kind, mhz * more) ?? 0).toBeGreaterThan(dbPer100M(kind, mhz) ?? 0);
        expect(wattsAfter(25, more)).toBeLessThan(25);
      },
    ),
  );
});
