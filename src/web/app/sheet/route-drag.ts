import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import type { LineEntry } from '../../../core/plan-shape.ts';
import type { Point } from '../../../papers/drawing/point.ts';
import type { Draggable, Goal } from '../../drawing/drag-on-drawing.ts';
import { type Spot, sheetPoint, sheetStretches } from '../../drawing/spots.ts';
import { holdRoute } from './route-held.ts';

/** How near a finger or a mouse must come, pixels. */
const reachPx = { hold: 14, place: 24, way: 14 } as const;

/** Where each place lies on the sheet, in millimetres, in each of its views. */
export type SheetPoints = readonly ReadonlyMap<string, Point>[];

/** The points of a route in one view. */
export const routeOnView = (view: ReadonlyMap<string, Point>, places: readonly string[]): Point[] =>
  places.flatMap((place) => {
    const point = view.get(place);
    return point === undefined ? [] : [point];
  });

const stretchesOf = (frame: HTMLElement, points: SheetPoints, places: readonly string[]): Spot[] =>
  points.flatMap((view) => sheetStretches(frame, routeOnView(view, places)));

const keyOf = ({ through }: LeadChoice): string =>
  'place' in through ? `place ${through.place}` : `way ${through.way}`;

/** The ends of the way a route is led through, in the order in which it passes them. */
const endsOf = ({ places, ways, through }: LeadChoice): readonly string[] => {
  const at = 'way' in through ? ways.indexOf(through.way) : -1;
  return at < 0 ? [] : places.slice(at, at + 2);
};

const goalOf = (frame: HTMLElement, points: SheetPoints, choice: LeadChoice): Goal => {
  const { through } = choice;
  if ('way' in through) {
    return { key: keyOf(choice), spots: stretchesOf(frame, points, endsOf(choice)), reachPx: reachPx.way };
  }
  const spots = points.flatMap((view) => routeOnView(view, [through.place]).flatMap((at) => sheetPoint(frame, at)));
  return { key: keyOf(choice), spots, reachPx: reachPx.place };
};

/** The drawn route of a line, to be taken hold of anywhere and led through another place or way. */
export const routeDrag = ({
  line,
  choices,
  points,
  frame,
  onLead,
}: {
  readonly line: LineEntry;
  readonly choices: readonly LeadChoice[];
  readonly points: SheetPoints;
  readonly frame: HTMLElement;
  readonly onLead: (choice: LeadChoice) => void;
}): Draggable => {
  const byKey = new Map(choices.map((choice) => [keyOf(choice), choice]));
  let over: string | undefined;
  const hold = (key: string | undefined): void => {
    const choice = key === undefined ? undefined : byKey.get(key);
    holdRoute({ line, choices, ...(choice === undefined ? {} : { choice }) });
  };
  return {
    grips: () => stretchesOf(frame, points, line.places),
    reachPx: reachPx.hold,
    goals: () => choices.map((choice) => goalOf(frame, points, choice)),
    onOver: (key) => {
      if (key === undefined || key !== over) hold(key);
      over = key;
    },
    onDrop: (key) => {
      const choice = byKey.get(key);
      if (choice !== undefined) onLead(choice);
    },
    onLeave: () => {
      over = undefined;
      holdRoute(undefined);
    },
  };
};
