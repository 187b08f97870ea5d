import type { MmShape } from '../../fits-shape.ts';
import type { Point } from './point.ts';

/** Nobody sets a unit further off the middle of its old hole than this. */
const furthestMm = 40;

interface Over {
  readonly hole: MmShape;
  readonly cut: MmShape;
  readonly bezel: MmShape;
}

const reachOf = (hole: number, cut: number, bezel: number): number =>
  Math.min(furthestMm, Math.ceil(Math.max(0, (bezel - hole) / 2, Math.abs(cut - hole) / 2)));

/** Every way to set a unit off the middle of a hole by whole millimetres, the nearest first; those as near by rows. */
export const offsetsOver = ({ hole, cut, bezel }: Over): readonly Point[] => {
  const reachX = reachOf(hole.widthMm, cut.widthMm, bezel.widthMm);
  const reachY = reachOf(hole.heightMm, cut.heightMm, bezel.heightMm);
  const offsets: Point[] = [];
  for (let y = -reachY; y <= reachY; y += 1) for (let x = -reachX; x <= reachX; x += 1) offsets.push([x, y]);
  return offsets.sort((a, b) => a[0] ** 2 + a[1] ** 2 - b[0] ** 2 - b[1] ** 2 || a[1] - b[1] || a[0] - b[0]);
};
