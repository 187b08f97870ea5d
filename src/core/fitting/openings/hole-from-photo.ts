import type { Hole, Opening } from '../../boat/opening.ts';
import type { Point } from './point.ts';

/** A traced outline is kept to a tenth of a millimetre: nobody marks a photo finer. */
const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0;

/**
 * A hole traced on a photo that was taken square to its panel: points in pixels from the upper left, and the two points of the
 * photo whose distance is known. Undefined where that gives no hole.
 *
 * @example holeFromPhoto([[0, 0], [400, 0], [400, 200], [0, 200]], { from, to, apartMm: 100 })
 */
export const holeFromPhoto = (
  points: readonly Point[],
  { from, to, apartMm }: Pick<NonNullable<Opening['traced']>, 'from' | 'to' | 'apartMm'>,
): Hole | undefined => {
  const mmPerPx = apartMm / Math.hypot(from.xPx - to.xPx, from.yPx - to.yPx);
  if (points.length < 3 || !Number.isFinite(mmPerPx)) return undefined;
  const [xs, ys] = [points.map(([x]) => x * mmPerPx), points.map(([, y]) => -y * mmPerPx)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [below, above] = [Math.min(...ys), Math.max(...ys)];
  const [widthMm, heightMm] = [tenth(right - left), tenth(above - below)];
  if (widthMm <= 0 || heightMm <= 0) return undefined;
  const middle: Point = [(left + right) / 2, (below + above) / 2];
  const outlineMm = xs.map((x, at): [number, number] => [tenth(x - middle[0]), tenth((ys[at] ?? 0) - middle[1])]);
  return { shape: 'traced', widthMm, heightMm, outlineMm };
};
