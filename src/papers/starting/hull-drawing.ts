import { type HullSize, hullPattern } from '../../core/facts/hull-patterns.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { hullOnView } from '../sheet/hull-on-view.ts';
import type { View } from '../sheet/view.ts';

/** What of a boat the small drawing shows. */
export interface DrawnHull {
  readonly hull: HullSize & {
    readonly masts?: readonly { readonly foot: string; readonly stepped: 'deck' | 'keel' }[];
  };
  readonly places: readonly { readonly id: string; readonly xM: number; readonly zM: number }[];
}

/** Ahead of the bow and aft of the stern, for a bowsprit, an outboard and the strokes themselves. */
const roundShare = 0.07;

/** A view of the side alone, fitted into a box with the keel, or the mast, at its edge. */
const sideIn = ({ hull }: DrawnHull, size: { widthMm: number; heightMm: number }): View => {
  const { lengthM, draftM, airDraft } = hull;
  const roundM = lengthM * roundShare;
  const heightM = airDraft.valueM + draftM + roundM;
  const mmPerM = Math.min(size.widthMm / (lengthM + 2 * roundM), size.heightMm / heightM);
  const leftMm = (size.widthMm - lengthM * mmPerM) / 2;
  const waterMm = size.heightMm - (draftM + roundM / 2) * mmPerM;
  const point = (acrossM: number, upM: number): Point => [leftMm + acrossM * mmPerM, waterMm - upM * mmPerM];
  return {
    name: 'side',
    box: { leftMm: 0, topMm: 0, rightMm: size.widthMm, bottomMm: size.heightMm },
    at: (place) => point(place.xM, place.zM),
    point,
  };
};

/** A mast down to what it stands on, so that one on deck and one on the keel are told apart. */
const mastShapes = (view: View, { hull, places }: DrawnHull): Shape[] =>
  (hull.masts ?? []).flatMap(({ foot, stepped }): Shape[] => {
    const at = places.find(({ id }) => id === foot);
    if (at === undefined) return [];
    const [xMm, footMm] = view.point(at.xM, at.zM);
    const deckMm = view.point(at.xM, hull.lengthM * 0.2)[1];
    const halfMm = 1.2;
    const stroke = { ink: 'ink', widthMm: 0.5 } as const;
    return [
      ...(stepped === 'keel'
        ? [
            pathShape(
              polyline([
                [xMm, deckMm],
                [xMm, footMm],
              ]),
              { stroke },
            ),
          ]
        : []),
      pathShape(
        polyline([
          [xMm - halfMm, footMm],
          [xMm + halfMm, footMm],
        ]),
        { stroke },
      ),
    ];
  });

/**
 * A hull pattern by its own small drawing: the boat from starboard, bow to the right, on the water, with the feet of her masts.
 *
 * @example hullDrawing(boatFromPattern({ pattern: 'ketch', name: '' }), { widthMm: 36, heightMm: 30 })
 */
export const hullDrawing = (boat: DrawnHull, size: { widthMm: number; heightMm: number }): Drawing => {
  const view = sideIn(boat, size);
  const waterMm = view.point(0, 0)[1];
  const water: Point[] = [
    [0, waterMm],
    [size.widthMm, waterMm],
  ];
  return {
    ...size,
    shapes: [
      pathShape(polyline(water), { stroke: { ink: 'rule', widthMm: 0.3 } }),
      ...hullOnView(view, hullPattern(boat.hull).side),
      ...mastShapes(view, boat),
    ],
  };
};
