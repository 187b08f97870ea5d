import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beadTiers } from './bead-tiers.ts';

test('things side by side lie in one tier, and those that would touch above each other', () => {
  const beads = [0, 5, 7, 12].map((fromMm) => ({ of: fromMm, fromMm, toMm: fromMm + 4 }));
  expect(beadTiers(beads, { gapMm: 0.5, most: 5 }).map(({ tier }) => tier)).toEqual([0, 0, 1, 0]);
});

test('no two things of a tier touch, as long as there are tiers enough', () => {
  const bead = fc.record({
    of: fc.constant(0),
    fromMm: fc.integer({ min: 0, max: 60 }),
    lengthMm: fc.integer({ min: 1, max: 6 }),
  });
  fc.assert(
    fc.property(fc.array(bead, { maxLength: 25 }), (all) => {
      const laid = beadTiers(
        all.map(({ of, fromMm, lengthMm }) => ({ of, fromMm, toMm: fromMm + lengthMm })),
        { gapMm: 0.5, most: 30 },
      );
      expect(laid).toHaveLength(all.length);
      for (const [at, { bead: one, tier }] of laid.entries()) {
        for (const { bead: other, tier: otherTier } of laid.slice(at + 1)) {
          if (tier === otherTier) expect(other.fromMm).toBeGreaterThanOrEqual(one.toMm + 0.5);
        }
      }
    }),
  );
});
