import { type Box, contains, textBox } from './box.ts';
import { flattenPath } from './flatten-path.ts';
import { type PathStep, pathData } from './path-data.ts';
import { around } from './piece.ts';
import { between, type Point } from './point.ts';
import { polygon } from './polyline.ts';
import { readPath } from './read-path.ts';
import type { PathShape, Shape } from './shapes.ts';

/** The part of a straight piece that lies in a box, or undefined where none does (Liang-Barsky). */
export const clipPiece = ([from, to]: readonly [Point, Point], box: Box): readonly [Point, Point] | undefined => {
  const run = [to[0] - from[0], to[1] - from[1]] as const;
  const sides = [
    [-run[0], from[0] - box.leftMm],
    [run[0], box.rightMm - from[0]],
    [-run[1], from[1] - box.topMm],
    [run[1], box.bottomMm - from[1]],
  ] as const;
  let enters = 0;
  let leaves = 1;
  for (const [speed, room] of sides) {
    if (speed === 0 && room < 0) return undefined;
    if (speed < 0) enters = Math.max(enters, room / speed);
    if (speed > 0) leaves = Math.min(leaves, room / speed);
  }
  return enters > leaves ? undefined : [between(from, to, enters), between(from, to, leaves)];
};

const boxOfSteps = (steps: readonly PathStep[]): Box => {
  const points = flattenPath(steps).flat();
  const [xs, ys] = [points.map(([xMm]) => xMm), points.map(([, yMm]) => yMm)];
  return {
    leftMm: Math.min(...xs),
    rightMm: Math.max(...xs),
    topMm: Math.min(...ys),
    bottomMm: Math.max(...ys),
  };
};

const isSame = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.001;

/** Pieces that follow each other are written as one line, so that dashes run on. */
const joined = (pieces: readonly (readonly [Point, Point])[]): PathStep[] => {
  const steps: PathStep[] = [];
  let at: Point | undefined;
  for (const [from, to] of pieces) {
    if (at === undefined || !isSame(at, from)) steps.push(['M', from[0], from[1]]);
    steps.push(['L', to[0], to[1]]);
    at = to;
  }
  return steps;
};

/** Curves of a hull stay smooth when they are cut. */
const fine = 24;

/** A filled mark smaller than this is whole or absent: half a square says nothing. */
const markMm = 8;

/** The corners of a figure that lie on one side of an edge, with those where it is cut (Sutherland and Hodgman). */
const cutBy = (
  corners: readonly Point[],
  isIn: (at: Point) => boolean,
  cut: (from: Point, to: Point) => Point,
): Point[] =>
  corners.flatMap((to, at): Point[] => {
    const from = corners.at(at - 1) ?? to;
    if (isIn(to)) return isIn(from) ? [to] : [cut(from, to), to];
    return isIn(from) ? [cut(from, to)] : [];
  });

const crossing = (from: Point, to: Point, axis: 0 | 1, value: number): Point =>
  between(from, to, (value - from[axis]) / (to[axis] - from[axis]));

const clipFigure = (corners: readonly Point[], { leftMm, rightMm, topMm, bottomMm }: Box): Point[] => {
  const left = cutBy(
    corners,
    ([x]) => x >= leftMm,
    (from, to) => crossing(from, to, 0, leftMm),
  );
  const right = cutBy(
    left,
    ([x]) => x <= rightMm,
    (from, to) => crossing(from, to, 0, rightMm),
  );
  const top = cutBy(
    right,
    ([, y]) => y >= topMm,
    (from, to) => crossing(from, to, 1, topMm),
  );
  return cutBy(
    top,
    ([, y]) => y <= bottomMm,
    (from, to) => crossing(from, to, 1, bottomMm),
  );
};

const clipPath = (shape: PathShape, box: Box): PathShape[] => {
  const steps = readPath(shape.d);
  const own = boxOfSteps(steps);
  if (contains(box, own)) return [shape];
  const isFilled = shape.fill !== undefined && shape.fill !== 'none';
  if (isFilled && Math.max(own.rightMm - own.leftMm, own.bottomMm - own.topMm) < markMm) return [];
  const flat = flattenPath(steps, fine);
  const pieces = flat.flatMap((piece) => {
    const kept = clipPiece(piece, box);
    return kept === undefined || isSame(kept[0], kept[1]) ? [] : [kept];
  });
  const { fill, stroke, ...rest } = shape;
  const figure = isFilled
    ? clipFigure(
        flat.map(([from]) => from),
        box,
      )
    : [];
  return [
    ...(figure.length < 3 || fill === undefined ? [] : [{ ...rest, fill, d: pathData(polygon(figure)) }]),
    ...(pieces.length === 0 || stroke === undefined ? [] : [{ ...rest, stroke, d: pathData(joined(pieces)) }]),
  ];
};

const clipShape = (shape: Shape, box: Box): Shape[] => {
  switch (shape.kind) {
    case 'group': {
      const shapes = clipShapes(shape.shapes, box);
      return shapes.length === 0 ? [] : [{ ...shape, shapes }];
    }
    case 'path':
      return clipPath(shape, box);
    case 'text':
      return contains(box, textBox(shape)) ? [shape] : [];
    case 'circle':
      return contains(box, around([shape.xMm, shape.yMm], shape.radiusMm)) ? [shape] : [];
  }
};

/** What of the shapes lies in a box: strokes are cut at its edge; texts, circles and filled marks are whole or absent. */
export const clipShapes = (shapes: readonly Shape[], box: Box): Shape[] =>
  shapes.flatMap((shape) => clipShape(shape, box));
