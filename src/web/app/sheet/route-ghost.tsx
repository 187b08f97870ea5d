import type { ReactNode } from 'react';
import { createPortal } from 'react-dom';
import { pathData } from '../../../papers/drawing/path-data.ts';
import { polyline } from '../../../papers/drawing/polyline.ts';
import './route-ghost.css';
import { ringPath } from './ring-path.ts';
import { routeOnView, type SheetPoints } from './route-drag.ts';
import type { HeldRoute } from './route-held.ts';

/** What is held drawn over the sheet: rings where it could be let go, and the route it would take. */
export const RouteGhost = ({
  held: { choice, choices = [] },
  points,
  layer,
}: {
  held: HeldRoute;
  points: SheetPoints;
  /** the layer of the sheet that moves with it */
  layer: Element;
}): ReactNode => {
  const places = choices.flatMap(({ through }) => ('place' in through ? [through.place] : []));
  const rings = points.flatMap((view) => routeOnView(view, places)).map(ringPath);
  const led = choice === undefined ? [] : points.map((view) => pathData(polyline(routeOnView(view, choice.places))));
  return createPortal(
    <g className="route-ghost">
      <path className="route-goals" d={rings.join('')} />
      <path className="route-led" d={led.join('')} />
    </g>,
    layer,
  );
};
