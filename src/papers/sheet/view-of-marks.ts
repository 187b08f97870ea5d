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

/** The first of the views in which a place stands freest of the others. */
const freestView = (mark: UnitMark, marks: readonly UnitMark[], views: readonly View[]): View | undefined => {
  let best: { view: View; freedom: number } | undefined;
  for (const view of views) {
    const freedom = freedomMm(mark, marks, view);
    if (best === undefined || freedom > best.freedom) best = { view, freedom };
  }
  return best?.view;
};

/** Each unit has its balloon in one of the views: where its place stands freer of the others. */
export const viewOfMarks = (
  marks: readonly UnitMark[],
  views: readonly View[],
): ReadonlyMap<View['name'], readonly UnitMark[]> => {
  const owned = new Map<View['name'], UnitMark[]>(views.map((view) => [view.name, []]));
  for (const mark of marks) {
    const view = freestView(mark, marks, views);
    if (view !== undefined) owned.get(view.name)?.push(mark);
  }
  return owned;
};
