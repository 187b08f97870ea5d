import type { Boat, Way } from '../../../../core/boat/boat-schema.ts';
import type { Point } from '../../../../papers/drawing/point.ts';
import type { ScaledView } from '../../../../papers/sheet/view.ts';
import type { Draggable, Goal, Hand } from '../../../drawing/drag-on-drawing.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { onSheet, sheetPoint, sheetStretches } from '../../../drawing/spots.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { newPlace, newSplit, newWay } from './boat-edits.ts';
import { moveWords } from './move-words.ts';
import { moveEdit, noShift, shiftIn } from './moved-places.ts';
import { holdInHand, type Shift, type Tool } from './place-hand.ts';
import { neighboursOf, snapped } from './snap.ts';
import { axesOf, seenOf } from './view-axes.ts';
import { words } from './words.ts';

/** How near a finger or a mouse must come, and how near a place comes to what it holds on to, pixels. */
const reachPx = { place: 16, crowded: 7, way: 9, snap: 8, drop: 24 } as const;

/** What the hand on the places needs of the page. */
export interface PlaceDragging {
  readonly boat: Boat;
  readonly views: readonly ScaledView[];
  readonly frame: HTMLElement;
  readonly lights: LightStore;
  readonly edit: MakeEdits;
  readonly tool: Tool;
  /** the grid on which places are put */
  readonly stepM: number;
  /** brings the keyboard to the name of what is new */
  readonly onNew: (id: string) => void;
}

/** Where a point of the window lies in a view, by the view’s own two measures. */
const seenAt = (frame: HTMLElement, view: ScaledView, at: Hand['at']) => {
  const point = onSheet(frame, at);
  if (point === undefined) return undefined;
  const [alongM, acrossM] = view.aboard([point[0], point[1]]);
  return { alongM, acrossM };
};

/** So many metres are a few pixels now. */
const metresOf = (frame: HTMLElement, view: ScaledView, px: number): number => {
  const [from, to] = [seenAt(frame, view, { x: 0, y: 0 }), seenAt(frame, view, { x: px, y: 0 })];
  return from === undefined || to === undefined ? 0 : Math.abs(to.alongM - from.alongM);
};

const pickedPlaces = ({ boat, lights }: PlaceDragging): ReadonlySet<string> => {
  const picked = lights.picked();
  return new Set(boat.places.flatMap(({ id }) => (picked.has(id) ? [id] : [])));
};

const pickPlace = (on: PlaceDragging, place: string, isMore: boolean): void => {
  const picked = pickedPlaces(on);
  if (!isMore) on.lights.pick([place]);
  else on.lights.pick(picked.has(place) ? [...picked].filter((id) => id !== place) : [...picked, place]);
};

/** A place in one view: dragged it moves, with all that are picked if it is one of them; pressed it is picked. */
const placeDrag = (on: PlaceDragging, view: ScaledView, place: Boat['places'][number]): Draggable => {
  const { boat, frame, edit, stepM } = on;
  const moved = (): ReadonlySet<string> => {
    const picked = pickedPlaces(on);
    return picked.has(place.id) ? picked : new Set([place.id]);
  };
  const shiftOf = ({ from, at, altKey }: Hand): { shift: Shift; says: string } => {
    const [start, end] = [seenAt(frame, view, from), seenAt(frame, view, at)];
    const ids = moved();
    if (start === undefined || end === undefined) return { shift: noShift, says: '' };
    const seen = seenOf(view.name, place);
    const wanted = {
      alongM: seen.alongM + end.alongM - start.alongM,
      acrossM: seen.acrossM + end.acrossM - start.acrossM,
    };
    const neighbours = neighboursOf(boat, place.id).filter(({ id }) => !ids.has(id));
    const reachM = metresOf(frame, view, reachPx.snap);
    const to = snapped({ at: wanted, view: view.name, neighbours, stepM, reachM, isFree: altKey });
    const shift = shiftIn(view.name, { alongM: to.alongM - seen.alongM, acrossM: to.acrossM - seen.acrossM });
    return { shift, says: moveWords({ boat, ids, shift, held: place.id, caught: to.caught }) };
  };
  return {
    grips: () => sheetPoint(frame, view.at(place)),
    // a new place may stand close to one that is there
    reachPx: on.tool === 'place' ? reachPx.crowded : reachPx.place,
    // a finger that scrolls past takes nothing along: it moves only what it picked before
    isFor: ({ isTouch }) => !isTouch || on.lights.picked().has(place.id),
    onPress: ({ shiftKey }) => pickPlace(on, place.id, shiftKey),
    onMove: (hand) => {
      const { shift, says } = shiftOf(hand);
      holdInHand({ kind: 'places', ids: moved(), shift }, says);
    },
    onPut: (hand) => {
      const ids = moved();
      if (!pickedPlaces(on).has(place.id)) on.lights.pick([place.id]);
      edit([moveEdit(boat, ids, shiftOf(hand).shift)]);
    },
    onLeave: () => holdInHand(),
  };
};

const wayPoints = (view: ScaledView, boat: Boat, way: Way): Point[] =>
  way.ends.flatMap((end) => {
    const place = boat.places.find(({ id }) => id === end);
    return place === undefined ? [] : [view.at(place)];
  });

/** How far along a way a point of the window lies, as a share of it; well away from its ends. */
const shareAt = (on: PlaceDragging, view: ScaledView, way: Way, at: Hand['at']): number => {
  const [from, to] = wayPoints(view, on.boat, way);
  const point = onSheet(on.frame, at);
  if (from === undefined || to === undefined || point === undefined) return 0.5;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0.5 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / square;
  return Math.min(0.95, Math.max(0.05, share));
};

/** A way in one view: pressed it is picked, or split where the tool is for that. */
const wayDrag = (on: PlaceDragging, view: ScaledView, way: Way): Draggable => ({
  grips: () => sheetStretches(on.frame, wayPoints(view, on.boat, way)),
  reachPx: reachPx.way,
  isFor: ({ isTouch }) => !isTouch || on.tool === 'split',
  onPress: ({ at }) => {
    if (on.tool !== 'split') {
      on.lights.pick([way.id]);
      return;
    }
    const made = newSplit(on.boat, way, shareAt(on, view, way, at));
    if (made === undefined) return;
    on.edit([made.edit]);
    on.onNew(made.id);
  },
  onMove: () => undefined,
  onPut: () => undefined,
  onLeave: () => undefined,
});

/** A way that is drawn from a place: let go over another place. */
const drawDrag = (on: PlaceDragging, view: ScaledView, place: Boat['places'][number]): Draggable => {
  const { boat, frame } = on;
  const goals = (): Goal[] =>
    boat.places
      .filter(({ id }) => id !== place.id)
      .map((other) => ({
        key: other.id,
        spots: on.views.flatMap((one) => sheetPoint(frame, one.at(other))),
        reachPx: reachPx.drop,
      }));
  const nameOf = (id: string): string => boat.places.find((one) => one.id === id)?.name ?? id;
  const saysOver = (key: string): string => {
    const other = boat.places.find(({ id }) => id === key);
    if (other === undefined) return '';
    const straightM = Math.hypot(place.xM - other.xM, place.yM - other.yM, place.zM - other.zM);
    return words.wayBetween(place.name, nameOf(key), straightM);
  };
  return {
    grips: () => sheetPoint(frame, view.at(place)),
    reachPx: reachPx.place,
    goals,
    onPress: () => on.lights.pick([place.id]),
    onOver: (key) =>
      holdInHand(
        { kind: 'way', from: place.id, ...(key === undefined ? {} : { to: key }) },
        key === undefined ? words.letGoOverPlace(place.name) : saysOver(key),
      ),
    onDrop: (key) => {
      const made = newWay(boat, [place.id, key]);
      on.edit([made.edit]);
      on.lights.pick([made.id]);
    },
    onLeave: () => holdInHand(),
  };
};

const inBox = ({ box }: ScaledView, [xMm, yMm]: Point): boolean =>
  xMm >= box.leftMm && xMm <= box.rightMm && yMm >= box.topMm && yMm <= box.bottomMm;

/** Empty paper, pressed with the tool for a new place. */
const newPlaceDrag = (on: PlaceDragging): Draggable => ({
  grips: () => 'anywhere',
  reachPx: 0,
  onPress: ({ at, altKey }) => {
    const point = onSheet(on.frame, at);
    if (point === undefined) return;
    const view = on.views.find((one) => inBox(one, [point[0], point[1]]));
    if (view === undefined) return;
    const [alongM, acrossM] = view.aboard([point[0], point[1]]);
    const reachM = metresOf(on.frame, view, reachPx.snap);
    const to = snapped({
      at: { alongM, acrossM },
      view: view.name,
      neighbours: [],
      stepM: on.stepM,
      reachM,
      isFree: altKey,
    });
    const [along, across] = axesOf(view.name);
    const made = newPlace(on.boat, { [along]: to.alongM, [across]: to.acrossM });
    on.edit([made.edit]);
    on.onNew(made.id);
  },
  onMove: () => undefined,
  onPut: () => undefined,
  onLeave: () => undefined,
});

/** A frame drawn on empty paper with shift: all places in it are picked, beside those that are. */
const frameDrag = (on: PlaceDragging): Draggable => {
  const found = ({ from, at }: Hand) => {
    const [start, end] = [onSheet(on.frame, from), onSheet(on.frame, at)];
    if (start === undefined || end === undefined) return undefined;
    const [left, right] = [Math.min(start[0], end[0]), Math.max(start[0], end[0])];
    const [top, bottom] = [Math.min(start[1], end[1]), Math.max(start[1], end[1])];
    const ids = on.boat.places.flatMap((place) =>
      on.views.some((view) => {
        const [x, y] = view.at(place);
        return x >= left && x <= right && y >= top && y <= bottom;
      })
        ? [place.id]
        : [],
    );
    return { start, end, ids };
  };
  return {
    grips: () => 'anywhere',
    reachPx: 0,
    isFor: ({ shiftKey }) => shiftKey,
    onMove: (hand) => {
      const box = found(hand);
      if (box === undefined) return;
      const frame = { kind: 'frame', view: 0, from: box.start, to: box.end, count: box.ids.length } as const;
      holdInHand(frame, words.inFrame(box.ids.length));
    },
    onPut: (hand) => on.lights.pick([...pickedPlaces(on), ...(found(hand)?.ids ?? [])]),
    onLeave: () => holdInHand(),
  };
};

/** All that can be taken hold of on the drawing of a boat, by what the tool is for. */
export const placeDrags = (on: PlaceDragging): Draggable[] => {
  const { boat, views, tool } = on;
  const places = (drag: typeof placeDrag): Draggable[] =>
    views.flatMap((view) => boat.places.map((place) => drag(on, view, place)));
  const ways = views.flatMap((view) => boat.ways.map((way) => wayDrag(on, view, way)));
  switch (tool) {
    case 'place':
      return [...places(placeDrag), newPlaceDrag(on)];
    case 'way':
      return places(drawDrag);
    case 'split':
      return ways;
    case 'points':
      return [];
    case 'move':
      return [...places(placeDrag), ...ways, frameDrag(on)];
  }
};
