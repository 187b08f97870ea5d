import type { MmShape } from '../../fits-shape.ts';
import type { Point } from './point.ts';

/** Points of a quarter of a circle: its chords lie within 0.03 mm of it where it is 50 mm in radius. */
const stepsOfQuarter = 24;

const quarter = (middle: Point, radiusMm: number, fromDeg: number): Point[] =>
  Array.from({ length: stepsOfQuarter + 1 }, (_, at) => {
    const angle = ((fromDeg + (90 * at) / stepsOfQuarter) * Math.PI) / 180;
    return [middle[0] + radiusMm * Math.cos(angle), middle[1] + radiusMm * Math.sin(angle)];
  });

const rectanglePoints = ({ xMm, yMm, widthMm, heightMm, cornerMm = 0 }: MmShape): Point[] => {
  const [right, above] = [widthMm / 2 - cornerMm, heightMm / 2 - cornerMm];
  const corners: readonly (readonly [number, number, number])[] = [
    [right, above, 0],
    [-right, above, 90],
    [-right, -above, 180],
    [right, -above, 270],
  ];
  return corners.flatMap(([x, y, fromDeg]): Point[] =>
    cornerMm === 0 ? [[xMm + x, yMm + y]] : quarter([xMm + x, yMm + y], cornerMm, fromDeg),
  );
};

/** The outline of a shape as points, turning left; arcs as chords that end on them. */
export const shapePoints = (shape: MmShape): readonly Point[] => {
  const { xMm, yMm, widthMm, outlineMm } = shape;
  if (shape.shape === 'round') {
    const at = [0, 90, 180, 270];
    return at.flatMap((fromDeg) => quarter([xMm, yMm], widthMm / 2, fromDeg).slice(0, -1));
  }
  return outlineMm === undefined ? rectanglePoints(shape) : outlineMm.map(([x, y]): Point => [xMm + x, yMm + y]);
};
