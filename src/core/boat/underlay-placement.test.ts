import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Underlay } from './underlay.ts';
import {
  aboardOf,
  firstFixes,
  mirroredFixes,
  movedFixes,
  pictureOf,
  repinned,
  scaledFixes,
  underlayPlacement,
} from './underlay-placement.ts';

const picture = { hash: '0'.repeat(64), type: 'jpeg', widthPx: 2000, heightPx: 800 } as const;
const underlay = (more: Partial<Underlay> = {}): Underlay => ({
  view: 'side',
  picture,
  ...firstFixes({ ...picture, lengthM: 10 }),
  ...more,
});

const close = (one: object, other: object): void => {
  for (const [key, value] of Object.entries(other)) expect(Object(one)[key]).toBeCloseTo(value, 6);
};

test('a new picture is as long as the boat, its middle at the waterline, up being up', () => {
  const placement = underlayPlacement(underlay());
  close(aboardOf(placement, { xPx: 0, yPx: 0 }), { alongM: 0, acrossM: 2 });
  close(aboardOf(placement, { xPx: 2000, yPx: 800 }), { alongM: 10, acrossM: -2 });
  // seen from above, starboard lies below the centreline
  close(aboardOf(underlayPlacement(underlay({ view: 'top' })), { xPx: 0, yPx: 0 }), { alongM: 0, acrossM: -2 });
});

test('a quarter turn: what lay along the picture lies up the mast', () => {
  const turned = underlay({
    from: { xPx: 0, yPx: 0, alongM: 5, acrossM: 0 },
    to: { xPx: 100, yPx: 0, alongM: 5, acrossM: 1 },
  });
  close(aboardOf(underlayPlacement(turned), { xPx: 0, yPx: 100 }), { alongM: 6, acrossM: 0 });
});

test('a picture with its bow to the left is mirrored and not turned over', () => {
  const mirrored = underlay({
    mirrored: true,
    from: { xPx: 2000, yPx: 400, alongM: 0, acrossM: 0 },
    to: { xPx: 0, yPx: 400, alongM: 10, acrossM: 0 },
  });
  close(aboardOf(underlayPlacement(mirrored), { xPx: 0, yPx: 0 }), { alongM: 10, acrossM: 2 });
});

test('two points known to be 5 m apart set the scale, the first staying where it is', () => {
  const points = [
    { xPx: 500, yPx: 400 },
    { xPx: 900, yPx: 400 },
  ] as const;
  const fixes = scaledFixes(underlay(), { points, apartM: 5, level: false });
  expect(fixes).toEqual({
    from: { xPx: 500, yPx: 400, alongM: 2.5, acrossM: 0 },
    to: { xPx: 900, yPx: 400, alongM: 7.5, acrossM: 0 },
  });
  const placement = underlayPlacement(underlay(fixes));
  expect(Math.hypot(placement.a, placement.b)).toBeCloseTo(5 / 400, 12);
});

const coordinate = fc.integer({ min: -2000, max: 4000 });
const metres = fc.integer({ min: -200, max: 3000 }).map((hundredths) => hundredths / 100);
const fix = fc.record({ xPx: coordinate, yPx: coordinate, alongM: metres, acrossM: metres });
const anyUnderlay = fc
  .record({ one: fix, other: fix, view: fc.constantFrom('side', 'top'), mirrored: fc.boolean() })
  .filter(({ one, other }) => Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx) > 100)
  .filter(({ one, other }) => Math.hypot(one.alongM - other.alongM, one.acrossM - other.acrossM) > 0.5)
  .map(({ one, other, view, mirrored }): Underlay => ({ ...underlay({ from: one, to: other }), view, mirrored }));

test('both fixed points lie where they were fixed, and whatever is aboard is found in the picture again', () => {
  fc.assert(
    fc.property(anyUnderlay, coordinate, coordinate, (given, xPx, yPx) => {
      const placement = underlayPlacement(given);
      for (const { xPx: x, yPx: y, ...at } of [given.from, given.to])
        close(aboardOf(placement, { xPx: x, yPx: y }), at);
      const back = pictureOf(placement, aboardOf(placement, { xPx, yPx }));
      expect(Math.hypot(back.xPx - xPx, back.yPx - yPx)).toBeLessThan(1e-4);
    }),
  );
});

test('scaled by two points, those are as far apart as was typed, level where that was asked', () => {
  fc.assert(
    fc.property(anyUnderlay, fc.boolean(), fc.integer({ min: 1, max: 30 }), (given, level, apartM) => {
      const points = [
        { xPx: 10, yPx: 20 },
        { xPx: 610, yPx: 320 },
      ] as const;
      const fixes = scaledFixes(given, { points, apartM, level });
      const placement = underlayPlacement({ ...given, ...fixes });
      const [from, to] = [aboardOf(placement, points[0]), aboardOf(placement, points[1])];
      expect(Math.hypot(to.alongM - from.alongM, to.acrossM - from.acrossM)).toBeCloseTo(apartM, 2);
      if (level) expect(to.acrossM).toBeCloseTo(from.acrossM, 2);
    }),
  );
});

test('the first mark takes the picture along, the second turns and scales it about the first', () => {
  const given = underlay();
  const by = { alongM: 1, acrossM: 0.5 };
  expect(movedFixes(given, { fix: 'from', by })).toMatchObject({
    from: { alongM: 1, acrossM: 0.5 },
    to: { alongM: 11, acrossM: 0.5 },
  });
  expect(movedFixes(given, { fix: 'to', by })).toMatchObject({ from: given.from, to: { alongM: 11, acrossM: 0.5 } });
});

test('mirrored, a level picture shows its bow at the other end and stays upright', () => {
  const given = underlay();
  const placement = underlayPlacement({ ...given, ...mirroredFixes(given), mirrored: true });
  close(aboardOf(placement, { xPx: 0, yPx: 0 }), { alongM: 10, acrossM: 2 });
  close(aboardOf(placement, { xPx: 2000, yPx: 0 }), { alongM: 0, acrossM: 2 });
});

test('fixed by two other points, a picture lies where it lay', () => {
  fc.assert(
    fc.property(anyUnderlay, coordinate, coordinate, (given, xPx, yPx) => {
      const points = [
        { xPx: 0, yPx: 0 },
        { xPx: 2000, yPx: 800 },
      ] as const;
      const before = aboardOf(underlayPlacement(given), { xPx, yPx });
      const after = aboardOf(underlayPlacement({ ...given, ...repinned(given, points) }), { xPx, yPx });
      // places are kept to the millimetre
      expect(Math.hypot(after.alongM - before.alongM, after.acrossM - before.acrossM)).toBeLessThan(0.01);
    }),
  );
});
