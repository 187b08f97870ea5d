import type { Opening } from '../../boat/opening.ts';

type Point = readonly [number, number];

/** What was marked on a photo of a hole: its outline, and two points that lie as far apart on the panel as was measured. */
export interface Tracing {
  /** x to the right, y down, pixels */
  readonly outlinePx: readonly Point[];
  readonly fromPx: Point;
  readonly toPx: Point;
  readonly apartMm: number;
  /** the two points are level on the panel, so that a photo held askew is turned upright */
  readonly isLevel?: boolean;
}

/** To a tenth of a millimetre: a photo shows no more. */
const tenths = (mm: number): number => Math.round(mm * 10) / 10;

const extent = (values: readonly number[]): { middle: number; size: number } => {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return { middle: (least + most) / 2, size: most - least };
};

/**
 * A hole traced on a photo that looks straight at its panel: scale k = apart / distance of the two points in pixels; each point
 * of the outline turned by the angle of the two where they are level, times k, y upwards, about the middle of its extents.
 * Undefined where fewer than three points are marked, the two points are one, or the outline encloses nothing.
 *
 * @example traceHole({ outlinePx: [[0, 0], [40, 0], [40, 20], [0, 20]], fromPx: [0, 0], toPx: [10, 0], apartMm: 50 })
 * // { shape: 'traced', widthMm: 200, heightMm: 100, outlineMm: [[-100, 50], [100, 50], [100, -50], [-100, -50]] }
 */
export const traceHole = ({
  outlinePx,
  fromPx,
  toPx,
  apartMm,
  isLevel = false,
}: Tracing): Opening['hole'] | undefined => {
  const [alongPx, acrossPx] = [toPx[0] - fromPx[0], toPx[1] - fromPx[1]];
  const distancePx = Math.hypot(alongPx, acrossPx);
  if (outlinePx.length < 3 || distancePx < 1 || !(apartMm > 0)) return undefined;
  // the nearer of the two ways to be level: which point was marked first says nothing
  const sign = alongPx < 0 ? -1 : 1;
  const [cos, sin] = isLevel ? [(sign * alongPx) / distancePx, (sign * acrossPx) / distancePx] : [1, 0];
  const scale = apartMm / distancePx;
  const all = outlinePx.map(([x, y]): Point => [(x * cos + y * sin) * scale, (x * sin - y * cos) * scale]);
  const [wide, high] = [extent(all.map(([x]) => x)), extent(all.map(([, y]) => y))];
  const [widthMm, heightMm] = [tenths(wide.size), tenths(high.size)];
  if (widthMm <= 0 || heightMm <= 0) return undefined;
  const outlineMm = all.map(([x, y]): [number, number] => [tenths(x - wide.middle) + 0, tenths(y - high.middle) + 0]);
  return { shape: 'traced', widthMm, heightMm, outlineMm };
};
