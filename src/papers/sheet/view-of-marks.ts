import { distanceMm } from '../drawing/point.ts';
import type { UnitMark } from './unit-marks.ts';
import type { View } from './view.ts';

/** How far the nearest other place with a unit lies in a view. */
const freedomMm = (mark: UnitMark, marks: readonly UnitMark[], view: View): number =>
  Math.min(
    ...marks
      .filter((other) => other.place.id !== mark.place.id)
      .map((other) => distanceMm(view.at(mark.place), view.at(other.place))),
  );

/** Each unit has its balloon in one of the two views: where its place stands freer of the others. */
export const viewOfMarks = (
  marks: readonly UnitMark[],
  { side, top }: { side: View; top: View },
): { side: UnitMark[]; top: UnitMark[] } => {
  const isSide = (mark: UnitMark): boolean => freedomMm(mark, marks, side) >= freedomMm(mark, marks, top);
  const fromSide = marks.filter(isSide);
  return { side: fromSide, top: marks.filter((mark) => !fromSide.includes(mark)) };
};
