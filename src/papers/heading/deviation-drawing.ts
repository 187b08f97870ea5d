import type { DeviationPoint } from '../../core/fitting/sea/deviation-curve.ts';
import { pathShape } from '../drawing/marks.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape, TextShape } from '../drawing/shapes.ts';

/** What a deviation curve is drawn from. */
export interface DeviationPicture {
  readonly title: string;
  /** as read, degrees, east positive */
  readonly points: readonly DeviationPoint[];
  /** by the curve, in equal steps from north round; empty where there is none */
  readonly card: readonly number[];
  readonly widthMm: number;
}

const heightMm = 46;
const edge = { leftMm: 15, rightMm: 6, topMm: 4, bottomMm: 8 } as const;
/** 11 px on screen */
const label = { sizeMm: 3, face: 'figures', ink: 'quiet' } as const;

interface Axes {
  readonly mostDeg: number;
  readonly at: (headingDeg: number, deviationDeg: number) => Point;
}

/** Heading to the right, east up, as much of it as the largest deviation needs in whole degrees. */
const axesOf = ({ points, card, widthMm }: DeviationPicture): Axes => {
  const sizes = [...points.map(({ deviationDeg }) => deviationDeg), ...card].map(Math.abs);
  const mostDeg = Math.ceil(Math.max(1, ...sizes));
  const perDegMm = (heightMm - edge.topMm - edge.bottomMm) / (2 * mostDeg);
  return {
    mostDeg,
    at: (headingDeg, deviationDeg) => [
      edge.leftMm + (headingDeg / 360) * (widthMm - edge.leftMm - edge.rightMm),
      edge.topMm + (mostDeg - deviationDeg) * perDegMm,
    ],
  };
};

const text = (words: string, [xMm, yMm]: Point, anchor: TextShape['anchor']): TextShape => ({
  kind: 'text',
  text: words,
  xMm,
  yMm,
  ...label,
  ...(anchor === undefined ? {} : { anchor }),
});

const levels = ({ mostDeg, at }: Axes): Shape[] =>
  [mostDeg, 0, -mostDeg].flatMap((deviationDeg): Shape[] => {
    const [xMm, yMm] = at(0, deviationDeg);
    const side = deviationDeg > 0 ? ' E' : ' W';
    return [
      pathShape(polyline([at(0, deviationDeg), at(360, deviationDeg)]), { stroke: { ink: 'rule', widthMm: 0.25 } }),
      text(`${Math.abs(deviationDeg)}°${deviationDeg === 0 ? '' : side}`, [xMm - 2, yMm + 1.05], 'end'),
    ];
  });

const headings = ({ mostDeg, at }: Axes): Shape[] =>
  [0, 90, 180, 270, 360].flatMap((headingDeg): Shape[] => {
    const [xMm, yMm] = at(headingDeg, -mostDeg);
    return [
      pathShape(polyline([at(headingDeg, mostDeg), [xMm, yMm]]), { stroke: { ink: 'rule', widthMm: 0.25 } }),
      text(`${String(headingDeg).padStart(3, '0')}°`, [xMm, yMm + 5], 'middle'),
    ];
  });

/** A smooth line through points that go round once and come back to the first: each is left in the direction of its neighbours. */
const smoothRound = (card: readonly number[], { at }: Axes): PathStep[] => {
  const step = 360 / card.length;
  const point = (index: number): Point => at(index * step, card[(index + card.length) % card.length] ?? 0);
  return Array.from({ length: card.length + 1 }, (_, index): PathStep => {
    const [xMm, yMm] = point(index);
    if (index === 0) return ['M', xMm, yMm];
    const [before, start, after] = [point(index - 2), point(index - 1), point(index + 1)];
    const out: Point = [start[0] + (xMm - before[0]) / 6, start[1] + (yMm - before[1]) / 6];
    const into: Point = [xMm - (after[0] - start[0]) / 6, yMm - (after[1] - start[1]) / 6];
    return ['C', ...out, ...into, xMm, yMm];
  });
};

/** The deviation of a compass over the headings: the points as read, and the curve through them. */
export const deviationDrawing = (picture: DeviationPicture): Drawing => {
  const axes = axesOf(picture);
  const { title, points, card, widthMm } = picture;
  const curve = card.length === 0 ? [] : [pathShape(smoothRound(card, axes), { stroke: { ink: 'ink', widthMm: 0.4 } })];
  const read = points.map(({ headingDeg, deviationDeg }): Shape => {
    const [xMm, yMm] = axes.at(headingDeg, deviationDeg);
    return { kind: 'circle', xMm, yMm, radiusMm: 0.9, fill: 'accent' };
  });
  return { title, widthMm, heightMm, shapes: [...levels(axes), ...headings(axes), ...curve, ...read] };
};
