import type { FitEntry, MmShape } from '../../fits-shape.ts';
import { grownShape } from './grown-shape.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm, touchingMm } from './sticks-out.ts';

/**
 * What becomes of an old hole under a new unit: it lies inside what is cut, or under the bezel with the land of the gasket all
 * round on solid panel, or shows. Touching counts as inside.
 *
 * @example holeCase({ hole, cut, bezel, landMm: 8 }) // 'under-bezel'
 */
export const holeCase = ({
  hole,
  cut,
  bezel,
  landMm,
}: {
  readonly hole: MmShape;
  readonly cut: MmShape;
  readonly bezel: MmShape;
  readonly landMm: number;
}): NonNullable<FitEntry['case']> => {
  const points = shapePoints(hole);
  if (sticksOutMm(points, cut) <= touchingMm) return 'inside-cutout';
  return sticksOutMm(points, grownShape(bezel, -landMm)) <= touchingMm ? 'under-bezel' : 'shows';
};
