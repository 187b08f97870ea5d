import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillVerdictOf, plugPasses } from './fill-verdict.ts';

const source = 'NFPA 70 chapter 9 table 1, second-hand; verdict by this project';

describe(`fill of a pipe (${source})`, () => {
  const mast = [6.1, 6.1, 7, 8, 8, 5.5, 6.5];
  test.each([
    ['PW-73', 25, mast, 51.8, 40, 28.5, 'doubt'],
    ['PW-74', 32, mast, 31.6, 40, 28.5, 'fits'],
    ['PW-75', 25, [10.3, 10.3], 33.9, 31, 26.2, 'advice'],
    ['PW-76', 18, [13], 52.2, 53, 17.9, 'doubt'],
    ['MR-01, 25 mm', 25, [10.3, 8, 6, 9, 9], 58.894, 40, 30.335, 'doubt'],
    ['MR-01, 32 mm', 32, [10.3, 8, 6, 9, 9], 35.946, 40, 30.335, 'fits'],
  ])('%s: in a bore of %d mm', (_id, boreMm, addedMm, fillPct, sharePct, leastBoreMm, verdict) => {
    const found = fillVerdictOf({ boreMm, inPlaceMm: [], addedMm });
    expect(Math.abs(found.fillPct - fillPct)).toBeLessThan(0.15);
    expect(found.sharePct).toBe(sharePct);
    expect(Math.abs(found.leastBoreMm - leastBoreMm)).toBeLessThan(0.15);
    expect(found.verdict).toBe(verdict);
  });

  test('MR-02: the share is 53, 31, 40 and 40 % for one, two, three and five cables', () => {
    const shares = [1, 2, 3, 5].map(
      (count) => fillVerdictOf({ boreMm: 50, inPlaceMm: [], addedMm: Array(count).fill(6) }).sharePct,
    );
    expect(shares).toEqual([53, 31, 40, 40]);
  });

  test('MR-03: three cables of 10.3 mm in 30 mm, 2.91 diameters, may jam', () => {
    const found = fillVerdictOf({ boreMm: 30, inPlaceMm: [], addedMm: [10.3, 10.3, 10.3] });
    expect(found).toMatchObject({ verdict: 'advice', reasons: ['jam'] });
    expect(fillVerdictOf({ boreMm: 34, inPlaceMm: [], addedMm: [10.3, 10.3, 10.3] }).reasons).toEqual([]);
  });
});

describe('what may still be drawn in (common practice, computed)', () => {
  test.each([
    ['PW-87', 25, [8, 7], [6.9], 16, 25.7, 'doubt', ['plug']],
    ['PW-88', 20, [6.1], [6.9], 16, 21.2, 'refused', ['plug']],
    ['PW-89', 25, [10.3], [8, 8, 6.1, 7], 8, 51.2, 'doubt', ['fill']],
    ['PW-90', 25, [10.3, 9], [9, 8, 8.5], 9, 64.7, 'refused', ['fill']],
    ['PW-91', 20, [10.3, 9, 8, 6], [], undefined, 71.8, 'doubt', ['fill']],
  ])('%s: a bore of %d mm', (_id, boreMm, inPlaceMm, addedMm, plugMm, fillPct, verdict, reasons) => {
    const found = fillVerdictOf({ boreMm, inPlaceMm, addedMm, ...(plugMm === undefined ? {} : { plugMm }) });
    expect(Math.abs(found.fillPct - fillPct)).toBeLessThan(0.15);
    expect(found).toMatchObject({ verdict, reasons });
  });
});

const diameters = fc.array(
  fc.integer({ min: 30, max: 150 }).map((tenths) => tenths / 10),
  { maxLength: 8 },
);
const ranks = ['fits', 'advice', 'doubt', 'refused'] as const;

test('what is all in already is never refused, whatever it fills', () => {
  fc.assert(
    fc.property(diameters, fc.integer({ min: 10, max: 60 }), (inPlaceMm, boreMm) => {
      expect(fillVerdictOf({ boreMm, inPlaceMm, addedMm: [] }).verdict).not.toBe('refused');
    }),
  );
});

test('one more cable never makes a refused pipe possible, nor does it let a plug by', () => {
  fc.assert(
    fc.property(diameters, diameters, fc.integer({ min: 10, max: 60 }), (inPlaceMm, addedMm, boreMm) => {
      const before = fillVerdictOf({ boreMm, inPlaceMm, addedMm: [...addedMm, 5] });
      const after = fillVerdictOf({ boreMm, inPlaceMm, addedMm: [...addedMm, 5, 5] });
      if (before.verdict === 'refused') expect(after.verdict).toBe('refused');
      const passes = ['yes', 'perhaps', 'no'] as const;
      const rank = (cables: readonly number[]): number =>
        passes.indexOf(plugPasses({ boreMm, inPlaceMm: cables, plugMm: 16 }));
      expect(rank([...inPlaceMm, 5])).toBeGreaterThanOrEqual(rank(inPlaceMm));
    }),
  );
});

test('a wider pipe is never worse, two cables above their share and three that jam aside', () => {
  fc.assert(
    fc.property(diameters, diameters, fc.integer({ min: 10, max: 60 }), (inPlaceMm, addedMm, boreMm) => {
      const [narrow, wide] = [boreMm, boreMm + 5].map((mm) =>
        ranks.indexOf(fillVerdictOf({ boreMm: mm, inPlaceMm, addedMm, plugMm: 16 }).verdict),
      );
      expect(Math.max(wide ?? 0, 1)).toBeLessThanOrEqual(Math.max(narrow ?? 0, 1));
    }),
  );
});
