import type { Place } from '../../../../core/boat/boat-schema.ts';
import type { Goal } from '../../../drawing/drag-on-drawing.ts';
import { sheetPoint } from '../../../drawing/spots.ts';
import type { SheetPoints } from '../../sheet/route-drag.ts';

/** How near to a place a unit must be let go, pixels. */
const reachPx = 28;

/** The places of the boat on the drawing, in each of its views, to let a unit go at. */
export const placeGoals = (frame: HTMLElement, points: SheetPoints, places: readonly Place[]): Goal[] =>
  places.map(({ id }) => ({
    key: id,
    spots: points.flatMap((view) => {
      const at = view.get(id);
      return at === undefined ? [] : sheetPoint(frame, at);
    }),
    reachPx,
  }));
