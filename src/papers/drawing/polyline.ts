import { figure, type PathStep } from './path-data.ts';
import { direction, distanceMm, type Point, stepFrom } from './point.ts';

/** Straight strokes from point to point. */
export const polyline = (points: readonly Point[]): PathStep[] =>
  points.map(([xMm, yMm], index) => [index === 0 ? 'M' : 'L', xMm, yMm]);

/** A closed figure with straight sides. */
export const polygon = (points: readonly Point[]): PathStep[] => [...polyline(points), ['Z']];

/** An upright rectangle. */
export const rectangle = (box: { leftMm: number; topMm: number; widthMm: number; heightMm: number }): PathStep[] => {
  const right = box.leftMm + box.widthMm;
  const bottom = box.topMm + box.heightMm;
  return polygon([
    [box.leftMm, box.topMm],
    [right, box.topMm],
    [right, bottom],
    [box.leftMm, bottom],
  ]);
};

const withoutRepeats = (points: readonly Point[]): Point[] =>
  points.filter((point, index) => {
    const before = points[index - 1];
    return before === undefined || figure(distanceMm(before, point)) !== '0';
  });

/** Total length of a polyline in millimetres. */
export const polylineLengthMm = (points: readonly Point[]): number =>
  points.reduce((sum, point, index) => sum + distanceMm(points[index - 1] ?? point, point), 0);

/**
 * The same polyline moved sideways by `acrossMm` (to its right hand), corners mitred;
 * a corner sharper than about 30 degrees is cut so that it never runs away.
 */
export const parallel = (points: readonly Point[], acrossMm: number): Point[] => {
  const clean = withoutRepeats(points);
  return clean.map((point, index) => {
    const before = clean[index - 1];
    const after = clean[index + 1];
    const into = before === undefined ? undefined : direction(before, point);
    const out = after === undefined ? undefined : direction(point, after);
    const first = into ?? out ?? [1, 0];
    const second = out ?? into ?? [1, 0];
    const cosHalf = Math.hypot(first[0] + second[0], first[1] + second[1]) / 2;
    const bisector = direction([0, 0], cosHalf < 0.01 ? second : [first[0] + second[0], first[1] + second[1]]);
    return stepFrom(point, bisector, { alongMm: 0, acrossMm: acrossMm / Math.max(cosHalf, 0.5) });
  });
};

/** The middle part of a polyline, `fromMm` from its start to `toMm`, both along it. */
export const partOf = (points: readonly Point[], { fromMm, toMm }: { fromMm: number; toMm: number }): Point[] => {
  const part: Point[] = [];
  let walkedMm = 0;
  for (const [index, end] of points.entries()) {
    const start = points[index - 1];
    if (start === undefined) continue;
    const lengthMm = distanceMm(start, end);
    const enters = Math.max(fromMm - walkedMm, 0);
    const leaves = Math.min(toMm - walkedMm, lengthMm);
    if (enters < leaves) {
      const heading = direction(start, end);
      if (part.length === 0) part.push(stepFrom(start, heading, { alongMm: enters, acrossMm: 0 }));
      part.push(stepFrom(start, heading, { alongMm: leaves, acrossMm: 0 }));
    }
    walkedMm += lengthMm;
  }
  return part;
};
