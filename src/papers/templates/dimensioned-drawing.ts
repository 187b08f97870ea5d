import type { MmShape } from '../../core/fits-shape.ts';
import { shapeBounds } from '../../core/fitting/openings/shape-bounds.ts';
import { pathShape } from '../drawing/marks.ts';
import { polygon, polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape, Stroke } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { acrossChain, upChain } from './dimension-lines.ts';
import { type OnDrawing, outlinePath } from './outline-path.ts';
import { mmText } from './size-words.ts';
import type { Template } from './template.ts';
import { templateExtent } from './template-extent.ts';

/** The room of the picture itself, and round it for dimensions and words. */
const picture = { widthMm: 118, heightMm: 84 } as const;
const around = { leftMm: 52, rightMm: 6, topMm: 6, bottomMm: 18, lineMm: 3.6 } as const;

/** Scales that a ruler of the trade knows. */
const scales = [1, 1 / 2, 1 / 2.5, 1 / 5, 1 / 10] as const;

const strokes = {
  cut: { ink: 'ink', widthMm: 0.35 },
  mark: { ink: 'quiet', widthMm: 0.18, dashMm: [1.6, 0.9] },
  axis: { ink: 'quiet', widthMm: 0.12, dashMm: [3, 0.8, 0.6, 0.8] },
  drill: { ink: 'ink', widthMm: 0.2 },
} as const satisfies Record<string, Stroke>;

const words = { sizeMm: 2.8, face: 'words' } as const;

const ascending = (values: readonly number[]): number[] =>
  [...new Set(values.map((value) => Number(value.toFixed(2))))].sort((a, b) => a - b);

/** Where the inner chain breaks: the middles of cut-outs in a plate, else the edges of the old hole. */
const innerStops = (template: Template, axis: 'x' | 'y'): number[] => {
  const [, ...inner] = template.cut;
  if (inner.length > 0) return inner.map(({ shape }) => (axis === 'x' ? shape.xMm : shape.yMm));
  return template.mark.slice(0, 1).flatMap(({ shape }) => {
    const { left, right, above, below } = shapeBounds(shape);
    return axis === 'x' ? [left, right] : [below, above];
  });
};

const drilledAt = ({ xMm, yMm, holeMm }: Template['drill'][number], on: OnDrawing, scale: number): Shape => {
  const [x, y] = on(xMm, yMm);
  const reach = Math.max(1, (holeMm / 2) * scale + 0.6);
  return pathShape(
    [
      ...polyline([
        [x - reach, y],
        [x + reach, y],
      ]),
      ...polyline([
        [x, y - reach],
        [x, y + reach],
      ]),
    ],
    { stroke: strokes.drill },
  );
};

const axesOf = ({ xMm, yMm, widthMm, heightMm }: MmShape, on: OnDrawing): Shape =>
  pathShape(
    [
      ...polyline([on(xMm - widthMm / 2, yMm), on(xMm + widthMm / 2, yMm)]),
      ...polyline([on(xMm, yMm + heightMm / 2), on(xMm, yMm - heightMm / 2)]),
    ],
    { stroke: strokes.axis },
  );

const screwWords = ({ drill }: Template): string[] => {
  const sizes = [...new Set(drill.map(({ holeMm }) => holeMm))].sort((a, b) => a - b);
  return sizes.map((holeMm) => `${drill.filter((one) => one.holeMm === holeMm).length} holes ${mmText(holeMm)} mm`);
};

/** What stands under the picture: what each outline is, the screws, what to know. */
const notesOf = (template: Template, scale: number): string[] => [
  ...(template.notForCutting.length === 0 ? [] : [`NOT FOR CUTTING: ${template.notForCutting.join('; ')}.`]),
  `Full lines: ${template.cut.map(({ says }) => says).join('; ')}.`,
  `Dashed: ${template.mark.map(({ says }) => says).join('; ')}.`,
  ...template.says,
  ...(template.drill.length === 0 ? [] : [`${screwWords(template).join(', ')}.`]),
  `Drawn ${scale === 1 ? 'in true size' : `1:${Number((1 / scale).toFixed(1))}`}, seen from the front; millimetres (inches).`,
];

type Rings = readonly (readonly (readonly [number, number])[])[];

/** What would be seen of the old hole beside the bezel, in grey; a ring that turns the other way is no part of it. */
const slivers = (bare: Rings, on: OnDrawing): Shape[] =>
  bare.length === 0
    ? []
    : [
        pathShape(
          bare.flatMap((points) => polygon(points.map(([x, y]) => on(x, y)))),
          { fill: 'rule' },
        ),
      ];

/** A plate or a cut-out with its dimensions, as large as a part of a page has room for. */
export const dimensionedDrawing = (template: Template, bare: Rings = []): Drawing => {
  const extent = templateExtent(template);
  const [widthMm, heightMm] = [extent.rightMm - extent.leftMm, extent.aboveMm - extent.belowMm];
  const scale = scales.find((one) => widthMm * one <= picture.widthMm && heightMm * one <= picture.heightMm) ?? 0.1;
  const onX = (mm: number): number => around.leftMm + (mm - extent.leftMm) * scale;
  const onY = (mm: number): number => around.topMm + (extent.aboveMm - mm) * scale;
  const on: OnDrawing = (xMm, yMm) => [onX(xMm), onY(yMm)];
  const [outer] = template.cut;
  if (outer === undefined) return { title: template.title, widthMm: 1, heightMm: 1, shapes: [] };
  const bounds = shapeBounds(outer.shape);
  const bottomMm = around.topMm + heightMm * scale;
  const all = around.leftMm + picture.widthMm + around.rightMm;
  const lines = notesOf(template, scale).flatMap((line) => wrapText(line, words, all - 4) ?? [line]);
  const notesMm = bottomMm + around.bottomMm;
  const chains: Shape[] = [
    ...acrossChain(ascending([bounds.left, ...innerStops(template, 'x'), bounds.right]), onX, {
      atYMm: bottomMm + 6,
      fromYMm: bottomMm + 1,
    }),
    ...acrossChain([bounds.left, bounds.right], onX, { atYMm: bottomMm + 12, fromYMm: bottomMm + 1 }),
    ...upChain(ascending([bounds.below, ...innerStops(template, 'y'), bounds.above]), onY, {
      atXMm: around.leftMm - 4,
      fromXMm: around.leftMm - 1,
    }),
    ...upChain([bounds.below, bounds.above], onY, { atXMm: around.leftMm - 27, fromXMm: around.leftMm - 1 }),
  ];
  return {
    title: template.title,
    widthMm: all,
    heightMm: notesMm + lines.length * around.lineMm + 1,
    shapes: [
      ...slivers(bare, on),
      ...template.mark.map(({ shape }) => pathShape(outlinePath(shape, on), { stroke: strokes.mark })),
      ...template.cut.slice(template.cut.length > 1 ? 1 : 0).map(({ shape }) => axesOf(shape, on)),
      ...template.cut.map(({ shape }) => pathShape(outlinePath(shape, on), { stroke: strokes.cut })),
      ...template.drill.map((one) => drilledAt(one, on, scale)),
      ...chains,
      ...lines.map(
        (text, at): Shape => ({
          kind: 'text',
          xMm: 2,
          yMm: notesMm + at * around.lineMm + 2.6,
          text,
          ...words,
          ink: 'ink',
        }),
      ),
    ],
  };
};
