import { clipShapes } from '../drawing/clip-shapes.ts';
import { pathShape } from '../drawing/marks.ts';
import { moveShapes } from '../drawing/move-shapes.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { flatRuler } from '../labels/flat-ruler.ts';
import type { Page, SetBinder } from '../pages/page-shape.ts';
import type { PaperName } from '../pages/paper-sizes.ts';
import { lineShapes } from '../pages/piece.ts';
import { typeStyles } from '../pages/type-styles.ts';
import { fittingSizeMm } from './fitting-size.ts';
import type { Template } from './template.ts';
import { templateDrawing } from './template-drawing.ts';
import { type Tile, type Tiling, tileEdges, tileOverlapMm, tilingOf } from './template-tiles.ts';
import { uprightRuler } from './upright-ruler.ts';

const hair = { ink: 'ink', widthMm: 0.13 } as const;
const crossMm = 3;

/** A square with both diagonals, printed on both sheets at one spot of the drawing: nothing that is drilled looks like it. */
const matchMark = (xMm: number, yMm: number): Shape[] => [
  pathShape(
    [
      ...polyline([
        [xMm - crossMm, yMm - crossMm],
        [xMm + crossMm, yMm + crossMm],
      ]),
      ...polyline([
        [xMm - crossMm, yMm + crossMm],
        [xMm + crossMm, yMm - crossMm],
      ]),
      ...rectangle({ leftMm: xMm - crossMm, topMm: yMm - crossMm, widthMm: 2 * crossMm, heightMm: 2 * crossMm }),
    ],
    { stroke: hair },
  ),
];

/** Where marks stand on a seam: at a quarter and at three quarters of every tile along it. */
const quarters = [0.25, 0.75] as const;

/** Marks in the middle of every strip that two sheets share, in millimetres of the drawing. */
export const matchMarks = ({ tiles, tileMm }: Tiling): readonly (readonly [xMm: number, yMm: number])[] =>
  tiles.flatMap(({ row, column, leftMm, topMm }) => [
    ...(column === 0 ? [] : quarters.map((at) => [leftMm + tileOverlapMm / 2, topMm + at * tileMm.heightMm] as const)),
    ...(row === 0 ? [] : quarters.map((at) => [leftMm + at * tileMm.widthMm, topMm + tileOverlapMm / 2] as const)),
  ]);

const heading = typeStyles.strong;

const refused = 'NOT FOR CUTTING';

/** Across a sheet: that nothing may be cut by it. */
const refusal = ({ tileMm }: Tiling): Shape[] => {
  const style = { face: 'words', weight: 'semibold' } as const;
  const sizeMm = Math.min(24, (0.85 * tileMm.widthMm) / textWidthMm(refused, { ...style, sizeMm: 1 }));
  return quarters.map((at) => ({
    kind: 'text',
    xMm: tileEdges.leftMm + tileMm.widthMm / 2,
    yMm: tileEdges.topMm + at * tileMm.heightMm,
    text: refused,
    sizeMm,
    ...style,
    anchor: 'middle',
    ink: 'rule',
  }));
};

const sheetWords = ({ row, column }: Tile, { rows, columns }: Tiling): string =>
  rows * columns === 1
    ? 'One sheet'
    : `Sheet ${row * columns + column + 1} of ${rows * columns}: row ${row + 1} from above, column ${column + 1} from the left; lay crossed square on crossed square, and drill only where a cross stands in a ring`;

const headShapes = (template: Template, tile: Tile, tiling: Tiling, boat: string): Shape[] => {
  const { leftMm } = tileEdges;
  const use =
    template.notForCutting.length > 0
      ? `Not for cutting: ${template.notForCutting.join('; ')}.`
      : template.says.join(' ');
  const title = `${boat}. ${template.title}`;
  const widthMm = tiling.tileMm.widthMm;
  const says = `${sheetWords(tile, tiling)}. Seen from the front. Print at 100 %; both rulers must measure 100 mm (3.94 in). ${use}`;
  return [
    ...lineShapes([title], { ...heading, sizeMm: fittingSizeMm(title, heading, widthMm) }, { leftMm, topMm: 4.5 }),
    ...lineShapes((wrapText(says, typeStyles.foot, widthMm) ?? [says]).slice(0, 3), typeStyles.foot, {
      leftMm,
      topMm: 9.5,
    }),
  ];
};

const pageOf = (template: Template, tile: Tile, tiling: Tiling, boat: string): Page => {
  const { leftMm, topMm, bottomMm } = tileEdges;
  const { pageMm, tileMm } = tiling;
  const box = {
    leftMm: tile.leftMm,
    topMm: tile.topMm,
    rightMm: tile.leftMm + tileMm.widthMm,
    bottomMm: tile.topMm + tileMm.heightMm,
  };
  const marks = matchMarks(tiling).flatMap(([xMm, yMm]) => matchMark(xMm, yMm));
  const drawn = clipShapes([...templateDrawing(template).shapes, ...marks], box);
  return {
    ...pageMm,
    shapes: [
      ...(template.notForCutting.length > 0 ? refusal(tiling) : []),
      ...moveShapes(drawn, { xMm: leftMm - tile.leftMm, yMm: topMm - tile.topMm }),
      pathShape(rectangle({ leftMm, topMm, ...tileMm }), { stroke: { ink: 'rule', widthMm: 0.13 } }),
      ...headShapes(template, tile, tiling, boat),
      ...flatRuler({ leftMm: leftMm + 2, topMm: pageMm.heightMm - bottomMm + 3 }),
      ...uprightRuler({ leftMm: 6, topMm: topMm + 4 }),
    ],
    insets: [],
    links: [],
  };
};

/** A template set on sheets of a paper in its true size, with marks to lay them by and rulers to check the print. */
export const templatePages = (
  template: Template,
  { boat, paper, dateIso }: { readonly boat: string; readonly paper: PaperName; readonly dateIso?: string },
): SetBinder => {
  const tiling = tilingOf(templateDrawing(template), paper);
  return {
    title: `${boat}: ${template.title}`,
    ...(dateIso === undefined ? {} : { dateIso }),
    pages: tiling.tiles.map((tile) => pageOf(template, tile, tiling, boat)),
    bookmarks: [],
  };
};
