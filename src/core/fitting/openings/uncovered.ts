import { differenceD, FillRule } from 'clipper2-ts';
import type { FitEntry, MmShape, Side } from '../../fits-shape.ts';
import { sides } from '../../fits-shape.ts';
import { pathArea } from './path-area.ts';
import type { Point } from './point.ts';
import { shapeBounds } from './shape-bounds.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm } from './sticks-out.ts';

/** Digits after the point in which clipping reckons, and the area below which a sliver is none. */
const clipping = { digits: 4, leastMm2: 0.05 } as const;

const toPath = (points: readonly Point[]) => points.map(([x, y]) => ({ x, y }));
const hundredth = (value: number): number => Math.round(value * 100) / 100;

const beyond = (hole: MmShape, cover: MmShape, side: Side): number => {
  const [own, covered] = [shapeBounds(hole)[side], shapeBounds(cover)[side]];
  return side === 'left' || side === 'below' ? covered - own : own - covered;
};

/** What of a hole a cover leaves bare: how wide on each side and at its widest, its area and its outlines; undefined where nothing is. */
export const uncoveredOf = (hole: MmShape, cover: MmShape): FitEntry['uncovered'] | undefined => {
  const points = shapePoints(hole);
  const bare = differenceD([toPath(points)], [toPath(shapePoints(cover))], FillRule.NonZero, clipping.digits);
  const slivers = bare.map((path) => path.map(({ x, y }): [number, number] => [x, y]));
  const areaMm2 = slivers.reduce((sum, path) => sum + pathArea(path), 0);
  if (areaMm2 < clipping.leastMm2) return undefined;
  return {
    widestMm: hundredth(sticksOutMm(points, cover)),
    sides: sides.map((side) => ({ side, mm: hundredth(beyond(hole, cover, side)) })).filter(({ mm }) => mm > 0),
    areaMm2: hundredth(areaMm2),
    slivers: slivers.map((path) => path.map(([x, y]): [number, number] => [hundredth(x), hundredth(y)])),
  };
};
