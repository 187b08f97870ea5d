import { pathShape } from './marks.ts';
import type { PathStep } from './path-data.ts';
import { rectangle } from './polyline.ts';
import type { Ink, Shape } from './shapes.ts';

/** An upright rectangle on the sheet. */
export interface Area {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Ways to fill an area that are told apart without colour. */
export const fillPatterns = ['solid', 'rising', 'upright', 'falling', 'level', 'crossed', 'empty'] as const;
export type FillPattern = (typeof fillPatterns)[number];

const gapMm = 1.3;

/** Multiples of the gap from `from` to `to`, so that areas side by side carry on the same lines. */
const stepsIn = (from: number, to: number): number[] => {
  const first = Math.ceil(from / gapMm);
  return Array.from({ length: Math.max(0, Math.floor(to / gapMm) - first + 1) }, (_, at) => (first + at) * gapMm);
};

const upright = ({ leftMm, topMm, widthMm, heightMm }: Area): PathStep[] =>
  stepsIn(leftMm, leftMm + widthMm).flatMap((xMm): PathStep[] => [
    ['M', xMm, topMm],
    ['L', xMm, topMm + heightMm],
  ]);

const level = ({ leftMm, topMm, widthMm, heightMm }: Area): PathStep[] =>
  stepsIn(topMm, topMm + heightMm).flatMap((yMm): PathStep[] => [
    ['M', leftMm, yMm],
    ['L', leftMm + widthMm, yMm],
  ]);

/** Slanting lines: `slope` 1 falls to the right, -1 rises. Each is x = c + slope * y, cut to the area. */
const slanting = ({ leftMm, topMm, widthMm, heightMm }: Area, slope: 1 | -1): PathStep[] => {
  const [right, bottom] = [leftMm + widthMm, topMm + heightMm];
  const offsets = [topMm, bottom].map((yMm) => slope * yMm);
  return stepsIn(leftMm - Math.max(...offsets), right - Math.min(...offsets)).flatMap((c): PathStep[] => {
    const ends = [leftMm, right].map((xMm) => slope * (xMm - c));
    const fromMm = Math.max(topMm, Math.min(...ends));
    const toMm = Math.min(bottom, Math.max(...ends));
    if (toMm - fromMm < 0.05) return [];
    return [
      ['M', c + slope * fromMm, fromMm],
      ['L', c + slope * toMm, toMm],
    ];
  });
};

/** The strokes of a pattern in an area, nothing under them; areas side by side carry on the same lines. */
export const hatching = (area: Area, pattern: FillPattern): PathStep[] => {
  switch (pattern) {
    case 'rising':
      return slanting(area, -1);
    case 'falling':
      return slanting(area, 1);
    case 'upright':
      return upright(area);
    case 'level':
      return level(area);
    case 'crossed':
      return [...slanting(area, 1), ...slanting(area, -1)];
    default:
      return [];
  }
};

/** An area filled with a pattern, with its outline. */
export const patterned = (area: Area, { pattern, ink }: { pattern: FillPattern; ink: Ink }): Shape[] => {
  const strokes = hatching(area, pattern);
  return [
    pathShape(rectangle(area), { fill: pattern === 'solid' ? ink : 'paper' }),
    ...(strokes.length === 0 ? [] : [pathShape(strokes, { stroke: { ink, widthMm: 0.3 } })]),
    pathShape(rectangle(area), { stroke: { ink, widthMm: 0.3 } }),
  ];
};
