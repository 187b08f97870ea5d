import type { FitEntry, MmShape, PlateEntry } from '../../core/fits-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polygon } from '../drawing/polyline.ts';
import type { Drawing, Shape, Stroke } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { type OnDrawing, outlinePath } from './outline-path.ts';

/** Room round the picture, and the foot that says what its lines are. */
const roundMm = 3;
const footMm = 5;

const strokes = {
  hole: { ink: 'ink', widthMm: 0.35, dashMm: [1.6, 0.9] },
  cut: { ink: 'ink', widthMm: 0.35 },
  bezel: { ink: 'quiet', widthMm: 0.25 },
  plate: { ink: 'quiet', widthMm: 0.25, dashMm: [4, 1, 0.6, 1] },
  shows: { ink: 'accent', widthMm: 0.3 },
} as const satisfies Record<string, Stroke>;

const footStyle = { sizeMm: 2.6, face: 'words' } as const;

/** The plate as it lies round this opening. */
const plateAround = ({ opening }: FitEntry, plate: PlateEntry): MmShape => {
  const here = plate.openings.find((one) => one.opening === opening);
  return { ...plate.outline, xMm: plate.outline.xMm - (here?.xMm ?? 0), yMm: plate.outline.yMm - (here?.yMm ?? 0) };
};

/** What the picture shows, the largest first, each with what its line is called. */
const partsOf = (
  fit: FitEntry,
  plate: PlateEntry | undefined,
): { says: string; shape: MmShape; stroke: Stroke; fill?: 'margin' | 'paper' }[] => [
  ...(plate === undefined
    ? []
    : [{ says: 'plate', shape: plateAround(fit, plate), stroke: strokes.plate, fill: 'margin' } as const]),
  ...(fit.bezel === undefined
    ? []
    : [{ says: 'new face', shape: fit.bezel, stroke: strokes.bezel, fill: 'paper' } as const]),
  ...(fit.cut === undefined ? [] : [{ says: 'new cut', shape: fit.cut, stroke: strokes.cut } as const]),
  { says: 'old hole', shape: fit.hole, stroke: strokes.hole },
];

const keyOf = (parts: readonly { says: string; stroke: Stroke }[], topMm: number): Shape[] => {
  let leftMm = 0;
  return parts.flatMap(({ says, stroke }) => {
    const startMm = leftMm;
    leftMm += 9.5 + textWidthMm(says, footStyle);
    return [
      pathShape(
        [
          ['M', startMm, topMm],
          ['L', startMm + 6, topMm],
        ],
        { stroke },
      ),
      { kind: 'text', xMm: startMm + 7, yMm: topMm + 0.9, text: says, ...footStyle, ink: 'quiet' } as const,
    ];
  });
};

/** What would show of the old hole, as one area: where a ring shows, the inner outline runs the other way round. */
const showing = ({ uncovered }: FitEntry, on: OnDrawing): Shape[] =>
  uncovered === undefined || uncovered.slivers.length === 0
    ? []
    : [
        pathShape(
          uncovered.slivers.flatMap((sliver) => polygon(sliver.map(([x, y]) => on(x, y)))),
          { stroke: strokes.shows, fill: 'accent' },
        ),
      ];

/** The old hole of an opening under what comes there, to scale in a given width, with what would show of it. */
export const fitPicture = (
  fit: FitEntry,
  plates: readonly PlateEntry[],
  { widthMm, mostHeightMm }: { readonly widthMm: number; readonly mostHeightMm: number },
): Drawing => {
  const plate = plates.find(({ id }) => id === fit.plate);
  const parts = partsOf(fit, plate);
  const reach = (middle: 'xMm' | 'yMm', size: 'widthMm' | 'heightMm'): readonly [number, number] => [
    Math.min(...parts.map(({ shape }) => shape[middle] - shape[size] / 2)),
    Math.max(...parts.map(({ shape }) => shape[middle] + shape[size] / 2)),
  ];
  const [left, right] = reach('xMm', 'widthMm');
  const [below, above] = reach('yMm', 'heightMm');
  const scale = Math.min((widthMm - 2 * roundMm) / (right - left), (mostHeightMm - 2 * roundMm) / (above - below));
  const startMm = (widthMm - (right - left) * scale) / 2;
  const on: OnDrawing = (xMm, yMm) => [startMm + (xMm - left) * scale, roundMm + (above - yMm) * scale];
  const bottomMm = (above - below) * scale + 2 * roundMm;
  return {
    widthMm,
    heightMm: bottomMm + footMm,
    shapes: [
      ...parts.map(({ shape, stroke, fill }) =>
        pathShape(outlinePath(shape, on), { stroke, ...(fill === undefined ? {} : { fill }) }),
      ),
      ...showing(fit, on),
      ...(fit.screws ?? []).map(
        ({ xMm, yMm, holeMm }): Shape => ({
          kind: 'circle',
          xMm: on(xMm, yMm)[0],
          yMm: on(xMm, yMm)[1],
          radiusMm: Math.max(0.4, (holeMm / 2) * scale),
          stroke: strokes.cut,
        }),
      ),
      ...keyOf(parts, bottomMm + 1.5),
    ],
  };
};
