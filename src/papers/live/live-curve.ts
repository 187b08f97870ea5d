import type { LiveCurve } from '../../core/proof/live/live-snapshot.ts';
import { pathData } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';

const heightMm = 34;
const leftMm = 11;
const rightMm = 2;
const topMm = 4;
const bottomMm = 6;
const textMm = 2.6;
/** An angle that seems to turn further than this from one point to the next has gone through north. */
const halfTurn = 180;
/** A point this much later than the one before is not joined to it: in between nothing was said. */
const longestGapMs = 5000;
const shortestSpanMs = 30_000;

const steps = [1, 2, 5] as const;

/** A round step of which a few fit a range. */
const roundStep = (range: number): number => {
  const rough = range / 3;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * (steps.find((step) => step * power >= rough) ?? 10);
};

interface Scale {
  readonly least: number;
  readonly most: number;
  readonly stepBy: number;
}

/** What the upright axis spans: a whole number of round steps around all values, never so fine that noise fills it. */
const scaleOf = (values: readonly number[]): Scale => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const range = Math.max(high - low, Math.abs(high) * 0.02, 0.1);
  const stepBy = roundStep(range);
  const middle = (low + high) / 2;
  const least = Math.floor((middle - range / 2) / stepBy) * stepBy;
  const most = Math.ceil((middle + range / 2) / stepBy) * stepBy;
  return { least, most: most > least ? most : least + stepBy, stepBy };
};

const printed = (value: number, stepBy: number): string =>
  value.toFixed(Math.max(0, -Math.floor(Math.log10(stepBy) + 1e-9)));

/** Stretches of points that follow each other: broken where nothing was said, and where an angle passes north. */
const stretches = ({ points, round }: LiveCurve): (readonly (readonly [number, number])[])[] => {
  const found: (readonly [number, number])[][] = [];
  let before: readonly [number, number] | undefined;
  for (const point of points) {
    const isBroken =
      before === undefined ||
      before[0] - point[0] > longestGapMs ||
      (round === true && Math.abs(before[1] - point[1]) > halfTurn);
    if (isBroken) found.push([point]);
    else found.at(-1)?.push(point);
    before = point;
  }
  return found;
};

const minutes = (ms: number): string =>
  ms < 60_000 ? `${Math.round(ms / 1000)} s ago` : `${Math.round(ms / 60_000)} min ago`;

/** The last minutes of one reading: value upward with its unit, time to the right, now at the edge. */
export const liveCurve = (curve: LiveCurve, { title, widthMm }: { title: string; widthMm: number }): Drawing => {
  const spanMs = Math.max(shortestSpanMs, ...curve.points.map(([age]) => age));
  const { least, most, stepBy } = scaleOf(curve.points.length === 0 ? [0, 1] : curve.points.map(([, value]) => value));
  const x = (ageMs: number): number => widthMm - rightMm - (ageMs / spanMs) * (widthMm - leftMm - rightMm);
  const y = (value: number): number => topMm + ((most - value) / (most - least)) * (heightMm - topMm - bottomMm);
  const at = ([ageMs, value]: readonly [number, number]): Point => [x(ageMs), y(value)];
  const ticks = Array.from(
    { length: Math.round((most - least) / stepBy) + 1 },
    (_unused, step) => least + step * stepBy,
  );
  const text = (words: string, [xMm, yMm]: Point, anchor: 'start' | 'end'): Shape => ({
    kind: 'text',
    xMm,
    yMm,
    text: words,
    sizeMm: textMm,
    face: 'figures',
    anchor,
    ink: 'quiet',
  });
  const shapes: Shape[] = [
    ...ticks.flatMap((value): Shape[] => [
      {
        kind: 'path',
        d: pathData(
          polyline([
            [leftMm, y(value)],
            [widthMm - rightMm, y(value)],
          ]),
        ),
        stroke: { ink: 'rule', widthMm: 0.2 },
      },
      text(printed(value, stepBy), [leftMm - 1, y(value) + textMm / 3], 'end'),
    ]),
    text(curve.unit, [leftMm, topMm - 1.2], 'start'),
    text(minutes(spanMs), [leftMm, heightMm - 1.5], 'start'),
    text('now', [widthMm - rightMm, heightMm - 1.5], 'end'),
    ...stretches(curve).map((points): Shape => {
      const [first] = points;
      return points.length === 1 && first !== undefined
        ? { kind: 'circle', xMm: x(first[0]), yMm: y(first[1]), radiusMm: 0.4, fill: 'data' }
        : { kind: 'path', d: pathData(polyline(points.map(at))), stroke: { ink: 'data', widthMm: 0.5 } };
    }),
  ];
  return { title, widthMm, heightMm, shapes };
};
