import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { boatPatterns } from '../../core/starting/patterns/index.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { hullDrawing } from './hull-drawing.ts';
import { newBoatDrawing } from './new-boat-drawing.ts';

const ids = boatPatterns.map(({ id }) => id);
const tile = { widthMm: 36, heightMm: 30 };

const cornersOf = (shape: Shape): (readonly [number, number])[] => {
  if (shape.kind === 'group') return shape.shapes.flatMap(cornersOf);
  if (shape.kind !== 'path') return [[shape.xMm, shape.yMm]];
  // every pair of the path data, control points of curves among them, which reach farther than the curve
  const figures = (shape.d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  return figures.flatMap((xMm, at) => (at % 2 === 0 ? [[xMm, figures[at + 1] ?? 0] as const] : []));
};

const reach = ({ shapes }: Drawing) => {
  const corners = shapes.flatMap(cornersOf);
  return {
    left: Math.min(...corners.map(([xMm]) => xMm)),
    right: Math.max(...corners.map(([xMm]) => xMm)),
    top: Math.min(...corners.map(([, yMm]) => yMm)),
    bottom: Math.max(...corners.map(([, yMm]) => yMm)),
  };
};

test.each(ids)('the small drawing of a %s keeps within its tile', (pattern) => {
  const { left, right, top, bottom } = reach(hullDrawing(boatFromPattern({ pattern, name: '' }), tile));
  expect(left).toBeGreaterThanOrEqual(0);
  expect(right).toBeLessThanOrEqual(tile.widthMm);
  expect(top).toBeGreaterThanOrEqual(0);
  expect(bottom).toBeLessThanOrEqual(tile.heightMm);
});

test('a mast on deck and one on the keel are drawn apart', () => {
  const drawnOf = (pattern: (typeof ids)[number]) =>
    hullDrawing(boatFromPattern({ pattern, name: '', lengthM: 10, beamM: 3, draftM: 1.7, airDraftM: 14 }), tile);
  expect(drawnOf('sloop-deck-stepped').shapes).not.toEqual(drawnOf('sloop-keel-stepped').shapes);
});

test('the boat that would be made is drawn within its sheet with every place in both views, whatever her measures', () => {
  const asked = fc.record({
    pattern: fc.constantFrom(...ids),
    lengthM: fc.double({ min: 3, max: 40, noNaN: true }),
    airDraftM: fc.double({ min: 1, max: 40, noNaN: true }),
  });
  fc.assert(
    fc.property(asked, ({ pattern, lengthM, airDraftM }) => {
      const boat = boatFromPattern({ pattern, name: '', lengthM, airDraftM });
      const drawing = newBoatDrawing(boat, { widthMm: 150, heightMm: 120 });
      expect(drawing.shapes.filter(({ kind }) => kind === 'circle').length).toBe(2 * boat.places.length);
      expect(drawing.heightMm).toBeLessThanOrEqual(120 + 1e-6);
      const { left, right, top, bottom } = reach(drawing);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(150);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(bottom).toBeLessThanOrEqual(drawing.heightMm);
    }),
    { numRuns: 60 },
  );
});
