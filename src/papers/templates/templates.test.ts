import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { MmShape } from '../../core/fits-shape.ts';
import { flattenPath } from '../drawing/flatten-path.ts';
import type { Point } from '../drawing/point.ts';
import { readPath } from '../drawing/read-path.ts';
import type { Shape } from '../drawing/shapes.ts';
import { dimensionedDrawing } from './dimensioned-drawing.ts';
import type { Template } from './template.ts';
import { onTemplate, templateDrawing } from './template-drawing.ts';
import { matchMarks, templatePages } from './template-pages.ts';
import { templateSvg } from './template-svg.ts';
import { tileEdges, tileOverlapMm, tilingOf } from './template-tiles.ts';

const plate = (widthMm: number, heightMm: number, own: Partial<Template> = {}): Template => {
  const outer: MmShape = { shape: 'rectangle', xMm: 0, yMm: 0, widthMm, heightMm, cornerMm: 10 };
  const cut: MmShape = { shape: 'rectangle', xMm: 10, yMm: 5, widthMm: widthMm / 2, heightMm: heightMm / 2 };
  return {
    id: 'plate',
    title: 'Adapter plate: old hole',
    about: ['hole'],
    cut: [
      { shape: outer, says: 'plate' },
      { shape: cut, says: 'cut-out' },
    ],
    mark: [{ shape: { ...cut, shape: 'round', widthMm: 60, heightMm: 60 }, says: 'old hole' }],
    drill: [{ xMm: 12 - widthMm / 2, yMm: 12 - heightMm / 2, holeMm: 4 }],
    says: ['GRP 5 mm.'],
    notForCutting: [],
    ...own,
  };
};

const linesOf = (shapes: readonly Shape[]): (readonly [Point, Point])[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return linesOf(shape.shapes);
    // rulers are written with the short letters of a path and are not read here
    return shape.kind === 'path' && !/[hv]/.test(shape.d) ? flattenPath(readPath(shape.d), 24) : [];
  });

const toPiece = ([x, y]: Point, [[aX, aY], [bX, bY]]: readonly [Point, Point]): number => {
  const [runX, runY] = [bX - aX, bY - aY];
  const squared = runX ** 2 + runY ** 2;
  const at = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - aX) * runX + (y - aY) * runY) / squared));
  return Math.hypot(x - aX - at * runX, y - aY - at * runY);
};

const size = fc.integer({ min: 120, max: 900 });

test('sheets laid together by their marks give the drawing again, line for line', () => {
  fc.assert(
    fc.property(size, size, fc.constantFrom('a4' as const, 'letter' as const), (widthMm, heightMm, paper) => {
      const template = plate(widthMm, heightMm);
      const drawing = templateDrawing(template);
      const { tiles, tileMm } = tilingOf(drawing, paper);
      const { pages } = templatePages(template, { boat: 'Tern', paper });
      expect(pages).toHaveLength(tiles.length);
      // every sheet moved back to where its part of the drawing is
      const laid = pages.map(({ shapes }, at) => {
        const { leftMm = 0, topMm = 0 } = tiles[at] ?? {};
        const by = [leftMm - tileEdges.leftMm, topMm - tileEdges.topMm] as const;
        const back = ([x, y]: Point): Point => [x + by[0], y + by[1]];
        return linesOf(shapes).map(([from, to]) => [back(from), back(to)] as const);
      });
      const outline = linesOf(drawing.shapes.filter((shape) => shape.kind === 'path' && shape.stroke?.widthMm === 0.3));
      expect(outline.length).toBeGreaterThan(8);
      for (const [from, to] of outline) {
        const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
        const on = tiles.flatMap(({ leftMm, topMm }, at) =>
          middle[0] >= leftMm &&
          middle[0] <= leftMm + tileMm.widthMm &&
          middle[1] >= topMm &&
          middle[1] <= topMm + tileMm.heightMm
            ? [at]
            : [],
        );
        expect(on.length).toBeGreaterThan(0);
        for (const at of on)
          expect(Math.min(...(laid[at] ?? []).map((piece) => toPiece(middle, piece)))).toBeLessThan(0.02);
      }
    }),
    { numRuns: 8 },
  );
});

test('every mark stands on both sheets that share its seam', () => {
  const tiling = tilingOf({ widthMm: 500, heightMm: 700 }, 'a4');
  const marks = matchMarks(tiling);
  expect(marks.length).toBeGreaterThan(4);
  for (const [x, y] of marks) {
    const on = tiling.tiles.filter(
      ({ leftMm, topMm }) =>
        x > leftMm && x < leftMm + tiling.tileMm.widthMm && y > topMm && y < topMm + tiling.tileMm.heightMm,
    );
    expect(on.length).toBeGreaterThan(1);
    const [inX, inY] = [(on[1]?.leftMm ?? 0) - x, (on[1]?.topMm ?? 0) - y].map(Math.abs);
    expect(Math.min(inX ?? 0, inY ?? 0)).toBeCloseTo(tileOverlapMm / 2, 6);
  }
});

test('a drawing is turned, or parted, only where it must be', () => {
  expect(tilingOf({ widthMm: 180, heightMm: 250 }, 'a4')).toMatchObject({ rows: 1, columns: 1 });
  expect(tilingOf({ widthMm: 250, heightMm: 150 }, 'a4')).toMatchObject({
    rows: 1,
    columns: 1,
    pageMm: { widthMm: 297 },
  });
  expect(tilingOf({ widthMm: 850, heightMm: 340 }, 'a4').tiles.length).toBeLessThanOrEqual(10);
});

test('the SVG is in millimetres, seen from the front, with a group a layer', () => {
  const svg = templateSvg(plate(200, 100));
  expect(svg).toContain('width="224mm" height="124mm" viewBox="-112 -62 224 124"');
  expect(svg).toContain('<rect x="-100" y="-50" width="200" height="100" rx="10"/>');
  // what lies above the middle is drawn above it
  expect(svg).toContain('<rect x="-40" y="-30" width="100" height="50"/>');
  expect(svg).toContain('<circle cx="-88" cy="38" r="2"/>');
  for (const id of ['cut', 'engrave', 'drill']) expect(svg).toContain(`<g id="${id}"`);
});

test('what is not for cutting says so in every form, and has no layer to cut', () => {
  const refused = plate(200, 100, { notForCutting: ['typical sizes'] });
  const svg = templateSvg(refused);
  expect(svg).toContain('NOT FOR CUTTING: typical sizes');
  expect(svg).not.toContain('id="cut"');
  const words = JSON.stringify(templatePages(refused, { boat: 'Tern', paper: 'a4' }));
  expect(words).toContain('NOT FOR CUTTING');
  expect(JSON.stringify(dimensionedDrawing(refused))).toContain('NOT FOR CUTTING');
});

test('the drawing has the size of the plate in both units, and lies within its sheet', () => {
  const drawing = dimensionedDrawing(plate(212, 178));
  const texts = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  expect(texts).toContain('212 (8.35 in)');
  expect(texts).toContain('178 (7.01 in)');
  const on = onTemplate(plate(212, 178));
  expect(on(-106, 89)).toEqual([6, 6]);
  for (const [from, to] of linesOf(drawing.shapes))
    for (const [x, y] of [from, to]) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(drawing.widthMm);
      expect(y).toBeLessThanOrEqual(drawing.heightMm);
    }
});
