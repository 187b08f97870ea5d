import { pathData } from './path-data.ts';
import type { Point } from './point.ts';
import { polygon, polyline, rectangle } from './polyline.ts';
import type { Ink, PathShape, Shape, Stroke } from './shapes.ts';

const square = ([xMm, yMm]: Point, sideMm: number): ReturnType<typeof rectangle> =>
  rectangle({ leftMm: xMm - sideMm / 2, topMm: yMm - sideMm / 2, widthMm: sideMm, heightMm: sideMm });

/** A path shape from steps. */
export const pathShape = (
  steps: Parameters<typeof pathData>[0],
  look: { stroke?: Stroke; fill?: Ink; about?: readonly string[] },
): PathShape => ({ kind: 'path', d: pathData(steps), ...look });

const solid = (ink: Ink, widthMm: number): Stroke => ({ ink, widthMm });

/** A tee: a small open square on the trunk. */
export const teeSquare = (at: Point, { sideMm = 2.4, about }: { sideMm?: number; about: readonly string[] }): Shape =>
  pathShape(square(at, sideMm), { stroke: solid('data', 0.4), fill: 'paper', about });

/** An end of the trunk with its terminator: a crossed square whose cross reaches past the corners. */
export const endSquare = (
  at: Point,
  { sideMm = 2.8, about }: { sideMm?: number; about: readonly string[] },
): Shape[] => {
  const [xMm, yMm] = at;
  const armMm = sideMm / 2;
  const arms: Point[][] = [
    [
      [xMm - armMm, yMm - armMm],
      [xMm + armMm, yMm + armMm],
    ],
    [
      [xMm - armMm, yMm + armMm],
      [xMm + armMm, yMm - armMm],
    ],
  ];
  return [
    pathShape(square(at, sideMm), { stroke: solid('data', 0.4), fill: 'paper', about }),
    pathShape(arms.flatMap(polyline), { stroke: solid('data', 0.4), about }),
  ];
};

/** A converter: a square with a diagonal, one language on each side of it. */
export const converterSquare = (
  at: Point,
  { sideMm = 2.8, about }: { sideMm?: number; about: readonly string[] },
): Shape[] => {
  const half = sideMm / 2;
  const diagonal: Point[] = [
    [at[0] - half, at[1] + half],
    [at[0] + half, at[1] - half],
  ];
  return [
    pathShape(square(at, sideMm), { stroke: solid('ink', 0.3), fill: 'paper', about }),
    pathShape(polyline(diagonal), { stroke: solid('ink', 0.3), about }),
  ];
};

/** An arrow head whose tip is at `at`, pointing along `heading` (a unit vector). */
export const arrowHead = (at: Point, heading: Point, { ink, about }: { ink: Ink; about: readonly string[] }): Shape => {
  const [xMm, yMm] = at;
  const backMm = 1.9;
  const halfMm = 0.65;
  const back: Point = [xMm - heading[0] * backMm, yMm - heading[1] * backMm];
  return pathShape(
    polygon([
      at,
      [back[0] - heading[1] * halfMm, back[1] + heading[0] * halfMm],
      [back[0] + heading[1] * halfMm, back[1] - heading[0] * halfMm],
    ]),
    { fill: ink, about },
  );
};

/** 11 px on screen: two figures still fit into the smallest balloon. */
const leastNumberMm = 2.92;

/** A balloon: a circle with a number. Filled with the accent where it wants a person's eye. */
export const balloon = (
  [xMm, yMm]: Point,
  { number, radiusMm, filled, about }: { number: number; radiusMm: number; filled: boolean; about: readonly string[] },
): Shape[] => {
  const sizeMm = Math.max(leastNumberMm, radiusMm * 1.14);
  return [
    {
      kind: 'circle',
      xMm,
      yMm,
      radiusMm,
      stroke: solid(filled ? 'accent' : 'ink', 0.3),
      fill: filled ? 'accent' : 'paper',
      about,
    },
    {
      kind: 'text',
      xMm,
      yMm: yMm + sizeMm * 0.335,
      text: String(number),
      sizeMm,
      face: 'words',
      weight: 'semibold',
      anchor: 'middle',
      ink: filled ? 'paper' : 'ink',
      about,
    },
  ];
};
