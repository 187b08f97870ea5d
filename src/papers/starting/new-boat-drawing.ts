import type { Boat } from '../../core/boat/boat-schema.ts';
import { hullPattern } from '../../core/facts/hull-patterns.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { hullOnView } from '../sheet/hull-on-view.ts';
import type { View } from '../sheet/view.ts';

const gapMm = 8;
const edgeMm = 4;

type Scale = { readonly mmPerM: number; readonly zeroMm: number };

const viewOf = (name: 'side' | 'top', { mmPerM, zeroMm }: Scale, lineMm: number): View => {
  const down = name === 'side' ? -1 : 1;
  const point = (acrossM: number, secondM: number): Point => [
    zeroMm + acrossM * mmPerM,
    lineMm + down * secondM * mmPerM,
  ];
  return {
    name,
    box: { leftMm: 0, topMm: 0, rightMm: 0, bottomMm: 0 },
    at: (place) => point(place.xM, name === 'side' ? place.zM : place.yM),
    point,
  };
};

/** Ways as fine broken lines, for nobody has seen them yet, and places as open dots. */
const marksOn = (view: View, { places, ways }: Boat): Shape[] => {
  const byId = new Map(places.map((place) => [place.id, view.at(place)]));
  const lines = ways.flatMap(({ ends }): Shape[] => {
    const [from, to] = ends.map((end) => byId.get(end));
    if (from === undefined || to === undefined) return [];
    return [pathShape(polyline([from, to]), { stroke: { ink: 'data', widthMm: 0.25, dashMm: [1.2, 0.8] } })];
  });
  const dots = [...byId.values()].map(
    ([xMm, yMm]): Shape => ({
      kind: 'circle',
      xMm,
      yMm,
      radiusMm: 0.8,
      stroke: { ink: 'ink', widthMm: 0.25 },
      fill: 'paper',
    }),
  );
  return [...lines, ...dots];
};

/**
 * The boat that is about to be made, from the side and from above on one axis, bow to the right, with the places and ways she
 * gets. Fitted into the width and, where a mast is high, the height given; no higher than it needs to be.
 */
export const newBoatDrawing = (boat: Boat, most: { widthMm: number; heightMm: number }): Drawing => {
  const { lengthM, beamM, draftM, airDraft } = boat.hull;
  const upM = airDraft.valueM + draftM;
  const mmPerM = Math.min(
    (most.widthMm - 2 * edgeMm) / (lengthM * 1.1),
    (most.heightMm - gapMm - 2 * edgeMm) / (upM + beamM),
  );
  const scale = { mmPerM, zeroMm: (most.widthMm - lengthM * mmPerM) / 2 };
  const waterMm = edgeMm + airDraft.valueM * mmPerM;
  const centreMm = waterMm + (draftM + beamM / 2) * mmPerM + gapMm;
  const hull = hullPattern(boat.hull);
  const [side, top] = [viewOf('side', scale, waterMm), viewOf('top', scale, centreMm)];
  const water: Point[] = [
    [0, waterMm],
    [most.widthMm, waterMm],
  ];
  return {
    widthMm: most.widthMm,
    heightMm: centreMm + (beamM / 2) * mmPerM + edgeMm,
    shapes: [
      pathShape(polyline(water), { stroke: { ink: 'rule', widthMm: 0.3 } }),
      ...hullOnView(side, hull.side),
      ...marksOn(side, boat),
      ...hullOnView(top, hull.top),
      ...marksOn(top, boat),
    ],
  };
};
