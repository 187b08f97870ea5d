import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ladderOhm } from './ladder-ohm.ts';

const light = 0.0919;
const pair = (lengthM: number, ...between: number[]) => ({
  atM: [0, ...between.map((_, at) => ((at + 1) * lengthM) / (between.length + 1)), lengthM],
  shuntOhm: [120, ...between, 120],
  ohmPerM: light,
});

describe('the ladder of a data pair', () => {
  test.each([
    [10, 60.5],
    [20, 60.9],
    [30, 61.3],
    [50, 62.2],
    [100, 64.3],
  ])('reads at an end of %i m of light cable what the table of resistances says: %f ohm (computed)', (m, ohm) => {
    expect(ladderOhm(pair(m), 0)).toBeCloseTo(ohm, 1);
    expect(ladderOhm(pair(m), 1)).toBeCloseTo(ohm, 1);
  });

  test('reads 61.38 ohm in the middle of 30 m, (120 + r L) / 2 (computed)', () => {
    expect(ladderOhm(pair(30, Number.POSITIVE_INFINITY), 1)).toBeCloseTo((120 + light * 30) / 2, 9);
  });

  test('reads 2 r d to a dead short, so 1 ohm is 5.4 m away (computed)', () => {
    const short = { atM: [0, 5.44, 30], shuntOhm: [120, 1e-9, 120], ohmPerM: light };
    expect(ladderOhm(short, 0)).toBeCloseTo(1 / (1 / 120 + 1), 2);
  });

  test('reads one terminator from either side of an open wire, and nothing where that is lifted too', () => {
    const open = { ...pair(20, Number.POSITIVE_INFINITY), openAfter: 1 };
    expect(ladderOhm(open, 0)).toBeCloseTo(120, 9);
    expect(ladderOhm(open, 2)).toBeCloseTo(120, 9);
    expect(ladderOhm({ ...open, shuntOhm: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 120] }, 0)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  test.each([
    [2, 10, 58.3, 58.8, 59.3],
    [2, 20, 56.6, 57.7, 58.6],
    [2, 30, 55.0, 56.6, 57.9],
    [2, 50, 52.2, 54.5, 56.6],
    [1, 20, 107, 111, 115],
    [3, 0, 40, 40, 40],
  ])(
    'with %i terminators and %i nodes reads what the table of resistances says (computed)',
    (terminators, nodes, ...ohm) => {
      for (const [turn, nodeOhm] of [20_000, 30_000, 50_000].entries()) {
        const shuntOhm = [
          ...Array.from({ length: terminators }, () => 120),
          ...Array.from({ length: nodes }, () => nodeOhm),
        ];
        const read = ladderOhm({ atM: shuntOhm.map(() => 0), shuntOhm, ohmPerM: light }, 0);
        expect(Math.abs(read - (ohm[turn] ?? 0))).toBeLessThanOrEqual(terminators === 1 ? 0.6 : 0.06);
      }
    },
  );

  test('is the sum of resistances side by side where the wire is nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.nat(), (nodes, at) => {
        const ladder = { ...pair(20, ...Array.from({ length: nodes }, () => 30_000)), ohmPerM: 0 };
        expect(ladderOhm(ladder, at % (nodes + 2))).toBeCloseTo(1 / (2 / 120 + nodes / 30_000), 9);
      }),
    );
  });

  test('never reads more with one more node, wherever that hangs', () => {
    const ohm = fc.integer({ min: 50, max: 50_000 });
    fc.assert(
      fc.property(fc.array(ohm, { maxLength: 12 }), ohm, fc.nat(), (between, more, where) => {
        const bare = pair(25, ...between);
        const at = where % bare.shuntOhm.length;
        const fuller = {
          ...bare,
          shuntOhm: bare.shuntOhm.map((one, n) => (n === at ? 1 / (1 / one + 1 / more) : one)),
        };
        for (const spot of bare.shuntOhm.keys())
          expect(ladderOhm(fuller, spot)).toBeLessThanOrEqual(ladderOhm(bare, spot) + 1e-9);
      }),
    );
  });
});
