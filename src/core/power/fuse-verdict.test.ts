import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuseVerdict } from './fuse-verdict.ts';

describe('a fuse before its wire', () => {
  it.each([
    ['PW-52', 20, 'ok', 80],
    ['PW-53', 30, 'warn', 120],
    ['PW-54', 40, 'refuse', 160],
  ])(
    '%s (33 CFR 183.455(c)(1), published, 150 %%; own limit 100 %%): %i A on a wire for 25 A: %s, %i %%',
    (_id, fuseA, verdict, pct) => {
      const found = fuseVerdict({ fuseA, conductorA: 25, nominalV: 12 });
      expect(found.verdict).toBe(verdict);
      expect(Math.abs(found.pct - pct)).toBeLessThan(0.1);
    },
  );

  it('is right at just what the wire carries, warned of at just half as much again, and refused above the wire from 50 V on', () => {
    expect(fuseVerdict({ fuseA: 25, conductorA: 25, nominalV: 12 }).verdict).toBe('ok');
    expect(fuseVerdict({ fuseA: 37.5, conductorA: 25, nominalV: 24 }).verdict).toBe('warn');
    expect(fuseVerdict({ fuseA: 30, conductorA: 25, nominalV: 50 }).verdict).toBe('refuse');
    expect(fuseVerdict({ fuseA: 1, conductorA: 0, nominalV: 12 }).verdict).toBe('refuse');
  });

  it('is never judged better when it is larger', () => {
    const rank = { ok: 0, warn: 1, refuse: 2 };
    const amps = fc.double({ min: 0.5, max: 300, noNaN: true });
    fc.assert(
      fc.property(amps, amps, amps, fc.constantFrom(12, 24, 60), (fuseA, moreA, conductorA, nominalV) => {
        const one = fuseVerdict({ fuseA, conductorA, nominalV });
        const larger = fuseVerdict({ fuseA: fuseA + moreA, conductorA, nominalV });
        expect(rank[larger.verdict]).toBeGreaterThanOrEqual(rank[one.verdict]);
      }),
    );
  });
});
