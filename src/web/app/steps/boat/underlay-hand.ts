import type { Underlay } from '../../../../core/boat/underlay.ts';
import {
  aboardOf,
  movedFixes,
  pictureOf,
  repinned,
  underlayPlacement,
} from '../../../../core/boat/underlay-placement.ts';
import type { ScaledView } from '../../../../papers/sheet/view.ts';
import type { Draggable, Hand } from '../../../drawing/drag-on-drawing.ts';
import { onSheet, sheetPoint } from '../../../drawing/spots.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { holdInHand, type InHand, takeTool } from './place-hand.ts';
import { words } from './words.ts';

const markReachPx = 16;

export interface UnderlayDragging {
  readonly underlays: readonly Underlay[];
  readonly views: readonly ScaledView[];
  readonly frame: HTMLElement;
  readonly edit: MakeEdits;
}

export const viewOf = (views: readonly ScaledView[], { view }: Underlay): ScaledView | undefined =>
  views.find(({ name }) => name === view);

/** Where a point of the window lies in the view of a picture. */
const seenAt = (frame: HTMLElement, view: ScaledView, at: Hand['at']) => {
  const point = onSheet(frame, at);
  if (point === undefined) return undefined;
  const [alongM, acrossM] = view.aboard([point[0], point[1]]);
  return { alongM, acrossM };
};

/** One of the two marks of a picture: the first takes the picture along, the other turns and scales it about the first. */
const markDrag = (on: UnderlayDragging, underlay: Underlay, view: ScaledView, fix: 'from' | 'to'): Draggable => {
  const moved = ({ from, at }: Hand): Underlay => {
    const [start, end] = [seenAt(on.frame, view, from), seenAt(on.frame, view, at)];
    if (start === undefined || end === undefined) return underlay;
    const by = { alongM: end.alongM - start.alongM, acrossM: end.acrossM - start.acrossM };
    return { ...underlay, ...movedFixes(underlay, { fix, by }) };
  };
  return {
    grips: () => sheetPoint(on.frame, view.point(underlay[fix].alongM, underlay[fix].acrossM)),
    reachPx: markReachPx,
    onMove: (hand) => {
      const now = moved(hand);
      const apartM = Math.hypot(now.to.alongM - now.from.alongM, now.to.acrossM - now.from.acrossM);
      holdInHand({ kind: 'underlay', underlay: now }, words.apartIs(apartM));
    },
    onPut: (hand) => {
      const now = moved(hand);
      holdInHand({ kind: 'underlay', underlay: now });
      on.edit([{ edit: 'set-underlay', params: now }]);
    },
    onLeave: () => holdInHand(),
  };
};

/** Two points of a picture, pressed one after the other: the marks lie there from then on, the picture stays where it is. */
const pointsDrag = (on: UnderlayDragging, inHand: () => InHand | undefined): Draggable => ({
  grips: () => 'anywhere',
  reachPx: 0,
  onPress: ({ at }) => {
    const point = onSheet(on.frame, at);
    if (point === undefined) return;
    const [x, y] = point;
    const found = on.underlays.find((one) => {
      const box = viewOf(on.views, one)?.box;
      return (
        box !== undefined &&
        one.hidden !== true &&
        x >= box.leftMm &&
        x <= box.rightMm &&
        y >= box.topMm &&
        y <= box.bottomMm
      );
    });
    const view = found === undefined ? undefined : viewOf(on.views, found);
    const seen = view === undefined ? undefined : seenAt(on.frame, view, at);
    if (found === undefined || seen === undefined) return;
    const pressed = pictureOf(underlayPlacement(found), seen);
    const first = inHand();
    if (first?.kind !== 'point' || first.view !== found.view) {
      holdInHand({ kind: 'point', view: found.view, point: pressed }, words.secondPoint);
      return;
    }
    takeTool('move');
    const params = { ...found, ...repinned(found, [first.point, pressed]) };
    on.edit([{ edit: 'set-underlay', params }]);
  },
  onMove: () => undefined,
  onPut: () => undefined,
  onLeave: () => undefined,
});

/** The marks of the pictures under the drawing, to be dragged; with the tool for it, two points of one to be pressed. */
export const underlayDrags = (
  on: UnderlayDragging,
  { isPoints, inHand }: { readonly isPoints: boolean; readonly inHand: () => InHand | undefined },
): Draggable[] => {
  if (isPoints) return [pointsDrag(on, inHand)];
  return on.underlays
    .filter(({ hidden }) => hidden !== true)
    .flatMap((underlay) => {
      const view = viewOf(on.views, underlay);
      if (view === undefined) return [];
      return (['from', 'to'] as const).map((fix) => markDrag(on, underlay, view, fix));
    });
};

/** Where a mark lies aboard, whatever the picture under it: for what is drawn of a first point. */
export const pointAboard = (underlay: Underlay, point: { readonly xPx: number; readonly yPx: number }) =>
  aboardOf(underlayPlacement(underlay), point);
