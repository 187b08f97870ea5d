import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type HullPart, type HullSize, hullPattern } from './hull-patterns.ts';
import { hullShapes } from './hull-shapes.ts';

const kinds = Object.keys(hullShapes) as HullSize['kind'][]; // the keys of a literal table are its kinds

const size = (kind: HullSize['kind']): HullSize => ({
  kind,
  lengthM: 12,
  beamM: 4,
  draftM: 1.5,
  airDraft: { valueM: 9 },
});

const ends = (parts: readonly HullPart[]): [number, number][] =>
  parts.flatMap((part) =>
    part.steps.flatMap((step): [number, number][] => {
      if (step[0] === 'Z') return [];
      return step[0] === 'C' ? [[step[5], step[6]]] : [[step[1], step[2]]];
    }),
  );
const across = (parts: readonly HullPart[]): number[] => ends(parts).map(([value]) => value);
const up = (parts: readonly HullPart[]): number[] => ends(parts).map(([, value]) => value);
const hullOf = (parts: readonly HullPart[]): HullPart[] => parts.filter((part) => part.role === 'hull');

test.each(kinds)('a %s is as long, wide and deep as the boat file says, and stays under its air draft', (kind) => {
  const { side, top, astern } = hullPattern(size(kind));
  expect(Math.max(...across(hullOf(side)))).toBeCloseTo(12, 0);
  expect(Math.min(...across(hullOf(side)))).toBeCloseTo(0, 6);
  expect(Math.max(...up(hullOf(top)))).toBeCloseTo(2, 6);
  expect(Math.min(...up(hullOf(top)))).toBeCloseTo(-2, 6);
  expect(Math.min(...up(side))).toBeCloseTo(-1.5, 6);
  expect(Math.max(...up(side))).toBeLessThanOrEqual(9 + 1e-9);
  expect(Math.max(...across(hullOf(astern)))).toBeCloseTo(2, 6);
  expect(Math.min(...across(hullOf(astern)))).toBeCloseTo(-2, 6);
  expect(Math.min(...up(astern))).toBeCloseTo(-1.5, 6);
  expect(Math.max(...up(astern))).toBeLessThanOrEqual(9 + 1e-9);
});

test.each(kinds)('a %s has her deck, house and mast at one height from the side and from astern', (kind) => {
  const { side, astern } = hullPattern(size(kind));
  const heightOf = (parts: readonly HullPart[], role: HullPart['role']): number =>
    Math.max(...up(parts.filter((part) => part.role === role)));
  expect(Math.abs(heightOf(side, 'house') - heightOf(astern, 'house'))).toBeLessThan(0.05 * 12);
  expect(heightOf(astern, 'spar')).toBeCloseTo(heightOf(side, 'spar'), 6);
});

test.each(kinds)('houses and arches of a %s are lowered where she passes under low bridges', (kind) => {
  expect(Math.max(...up(hullPattern({ ...size(kind), airDraft: { valueM: 0.5 } }).side))).toBeLessThanOrEqual(
    0.5 + 1e-6,
  );
});

test('seen from above and from astern, port and starboard are alike on every kind of boat', () => {
  for (const kind of kinds) {
    for (const part of hullPattern(size(kind)).astern) {
      const breadths = across([part]).map((value) => Math.round(value * 1e6));
      for (const breadth of breadths) expect(breadths, kind).toContain(-breadth + 0);
    }
    for (const part of hullPattern(size(kind)).top) {
      const heights = up([part]).map((value) => Math.round(value * 1e6));
      for (const height of heights) expect(heights, kind).toContain(-height + 0);
    }
  }
});

test('every outline is finite whatever the size', () => {
  const sizes = fc.record({
    kind: fc.constantFrom(...kinds),
    lengthM: fc.double({ min: 2, max: 60, noNaN: true }),
    beamM: fc.double({ min: 0.5, max: 20, noNaN: true }),
    draftM: fc.double({ min: 0.05, max: 10, noNaN: true }),
    airDraft: fc.record({ valueM: fc.double({ min: 0.5, max: 80, noNaN: true }) }),
  });
  fc.assert(
    fc.property(sizes, (any) => {
      const { side, top, astern } = hullPattern(any);
      for (const value of [side, top, astern].flatMap((parts) => [...up(parts), ...across(parts)])) {
        expect(Number.isFinite(value)).toBe(true);
      }
      expect(Math.max(...up(side))).toBeLessThanOrEqual(any.airDraft.valueM + 1e-6);
    }),
    { numRuns: 100 },
  );
});

test('an outline in the boat file takes the place of the pattern', () => {
  const own = {
    side: [
      [0, 1],
      [10, 1.5],
      [8, -1],
    ],
    top: [
      [0, -1],
      [10, 0],
      [0, 1],
    ],
  } as const;
  expect(hullPattern({ ...size('sloop'), outline: own })).toMatchObject({
    side: [{ role: 'hull', steps: [['M', 0, 1], ['L', 10, 1.5], ['L', 8, -1], ['Z']] }],
    top: [{ role: 'hull', steps: [['M', 0, -1], ['L', 10, 0], ['L', 0, 1], ['Z']] }],
  });
});
