import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { headingMap } from '../../core/fitting/heading/heading-map.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Drawing } from '../drawing/shapes.ts';
import { reachIn } from '../framed/boat/window-plan.ts';
import { leastHeightMm } from '../framed/boat/window-view.ts';
import { knownBoat } from '../framed/known-boat.ts';
import type { HeadingRow } from './heading-rows.ts';
import { mapView } from './map-view.ts';
import { neighbourKind, neighbourName } from './near-words.ts';

/** Room over and under each view. */
const airMm = 3;

/** A picture of where a heading sensor may go, and what its numbers stand for. */
interface HeadingPicture {
  readonly drawing: Drawing;
  readonly limits: readonly HeadingRow[];
}

/**
 * Where a heading sensor may go, as a picture of its own of some width: from the side, then from above, with the numbers of
 * what limits it. For the sensor asked for, else for one that is still to be placed.
 */
export const mapDrawing = ({
  boat,
  plan,
  widthMm,
  unit,
}: {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly widthMm: number;
  readonly unit?: string;
}): HeadingPicture => {
  const known = knownBoat({ boat, plan, paper: 'a4' });
  const map = headingMap({ index: indexBoat(boat), lines: plan.lines, feeds: plan.feeds }, unit);
  const reaches = map.views.map(({ view }) => reachIn(view, boat));
  const mmPerM = Math.min(...reaches.map(({ fromM, toM }) => (widthMm - 2) / (toM - fromM)));
  let topMm = 0;
  const shapes = map.views.flatMap((view, at) => {
    const reach = reaches[at];
    if (reach === undefined) return [];
    const box = { leftMm: 0, rightMm: widthMm, topMm, bottomMm: topMm + leastHeightMm(reach, mmPerM) + airMm };
    topMm = box.bottomMm;
    return mapView({ known, map, mapView: view, box, mmPerM, bare: true });
  });
  const numberOf = (id: string): string => {
    const mark = known.marks.find(({ kit }) => kit.id === id);
    return mark === undefined ? '' : `${mark.number} `;
  };
  return {
    drawing: { title: 'Where a heading sensor may go', widthMm, heightMm: topMm, shapes },
    limits: map.limits.map((limit) => ({
      key: limit.id,
      what: `${numberOf(limit.id)}${neighbourName(known.index, limit)}`,
      fact: `keeps one ${limit.leastM.toFixed(2)} m off (${neighbourKind(limit)})`,
      lights: [limit.id],
    })),
  };
};
