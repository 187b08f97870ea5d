// biome-ignore-all lint/a11y/useSemanticElements: an SVG has no button element, and a fieldset cannot stand in one
// biome-ignore-all lint/a11y/noAriaHiddenOnFocusable: an SVG text takes no focus
// biome-ignore-all lint/a11y/noStaticElementInteractions: the keyboard picks ways in the list of all of them
// biome-ignore-all lint/a11y/useKeyWithClickEvents: as above
import { type KeyboardEvent, type ReactNode, useState, useSyncExternalStore } from 'react';
import { createPortal } from 'react-dom';
import type { Boat, Place } from '../../../../core/boat/boat-schema.ts';
import { shortName } from '../../../../core/boat/short-name.ts';
import { pathData } from '../../../../papers/drawing/path-data.ts';
import type { Point } from '../../../../papers/drawing/point.ts';
import { polyline } from '../../../../papers/drawing/polyline.ts';
import type { ScaledView } from '../../../../papers/sheet/view.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { nextInRow } from '../../../drawing/roving-focus.ts';
import { useWords } from '../../words/units.ts';
import './place-layer.css';
import { noShift, shifted } from './moved-places.ts';
import { type Shift, usePlaceHand } from './place-hand.ts';
import { UnderlayLayer } from './underlay-layer.tsx';
import { type Axis, axesOf, downOf } from './view-axes.ts';
import { words } from './words.ts';

const ringMm = 1.25;
const pickedMm = 2.1;

interface LayerProps {
  readonly boat: Boat;
  readonly views: readonly ScaledView[];
  readonly layer: Element;
  /** where what is in the hand is drawn */
  readonly over: Element;
  readonly lights: LightStore;
  /** one press of an arrow key moves so far */
  readonly stepM: number;
  readonly onArrow: (held: string, by: Partial<Record<Axis, number>>) => void;
  readonly onPut: () => void;
}

const line = (points: readonly Point[]): string => pathData(polyline(points));

const arrows: Readonly<Record<string, readonly [right: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** How far an arrow key moves a place in a view; ten steps with shift. */
const arrowShift = (
  view: ScaledView,
  event: KeyboardEvent,
  stepM: number,
): Partial<Record<Axis, number>> | undefined => {
  const arrow = arrows[event.key];
  if (arrow === undefined || event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const [along, across] = axesOf(view.name);
  const far = event.shiftKey ? 10 * stepM : stepM;
  return arrow[0] === 0 ? { [across]: arrow[1] * downOf(view.name) * far } : { [along]: arrow[0] * far };
};

const WayLines = ({
  boat,
  lights,
  view,
  picked,
}: Pick<LayerProps, 'boat' | 'lights'> & { view: ScaledView; picked: ReadonlySet<string> }): ReactNode => {
  const places = new Map(boat.places.map((place) => [place.id, place]));
  return boat.ways.map((way) => {
    const points = way.ends.flatMap((end) => {
      const place = places.get(end);
      return place === undefined ? [] : [view.at(place)];
    });
    return (
      <g key={way.id}>
        <path className={picked.has(way.id) ? 'way-line picked' : 'way-line'} d={line(points)} />
        <path className="way-reach" d={line(points)} onClick={() => lights.pick([way.id])} />
      </g>
    );
  });
};

interface MarksProps extends LayerProps {
  readonly view: ScaledView;
  readonly picked: ReadonlySet<string>;
}

/** The places of one view: one stop for Tab, from which the arrow keys go on, or move the place once it is picked. */
const PlaceMarks = ({ boat, view, lights, picked, stepM, onArrow, onPut }: MarksProps): ReactNode => {
  const say = useWords();
  const row = [...boat.places].sort((a, b) => a.xM - b.xM || a.yM - b.yM || a.zM - b.zM);
  const [stop, setStop] = useState<string | undefined>(undefined);
  const stopAt = row.some(({ id }) => id === stop) ? stop : row[0]?.id;
  const onKey = (event: KeyboardEvent<SVGGElement>, place: Place, at: number): void => {
    if (event.key === 'Enter' || event.key === ' ') {
      const others = [...picked].filter((id) => id !== place.id);
      if (event.shiftKey) lights.pick(picked.has(place.id) ? others : [...others, place.id]);
      else lights.pick([place.id]);
    } else if (event.key === 'Escape') {
      onPut();
      lights.pick([]);
    } else if (picked.has(place.id)) {
      const by = arrowShift(view, event, stepM);
      if (by === undefined) return;
      onArrow(place.id, by);
    } else {
      const next = row[nextInRow({ key: event.key, at, count: row.length }) ?? -1];
      if (next === undefined) return;
      setStop(next.id);
      event.currentTarget.parentElement?.querySelector<SVGGElement>(`[data-place="${CSS.escape(next.id)}"]`)?.focus();
    }
    event.preventDefault();
    event.stopPropagation();
  };
  return row.map((place, at) => {
    const [xMm, yMm] = view.at(place);
    const isPicked = picked.has(place.id);
    const label = say(words.placeMark(place.name, place));
    return (
      <g
        key={place.id}
        className={isPicked ? 'place-mark picked' : 'place-mark'}
        data-place={place.id}
        role="button"
        tabIndex={place.id === stopAt ? 0 : -1}
        aria-pressed={isPicked}
        aria-label={isPicked ? words.placePicked(label) : label}
        onClick={() => lights.pick([place.id])}
        onKeyDown={(event) => onKey(event, place, at)}
        onFocus={() => setStop(place.id)}
        onBlur={onPut}
      >
        <circle className="place-reach" cx={xMm} cy={yMm} r={pickedMm} />
        <circle className="place-ring" cx={xMm} cy={yMm} r={ringMm} />
        {isPicked ? <circle className="place-picked" cx={xMm} cy={yMm} r={pickedMm} /> : null}
        <text className="place-name words" x={xMm} y={yMm - 2.7} fontSize={2.6} textAnchor="middle" aria-hidden="true">
          {shortName(place.name)}
        </text>
      </g>
    );
  });
};

/** Places on their way in one view, with the ways that go with them. */
const Ghosts = ({
  boat,
  view,
  ids,
  shift,
}: {
  boat: Boat;
  view: ScaledView;
  ids: ReadonlySet<string>;
  shift: Shift;
}): ReactNode => {
  const places = new Map(boat.places.map((place) => [place.id, shifted(place, ids.has(place.id) ? shift : noShift)]));
  const pointOf = (id: string): Point[] => {
    const place = places.get(id);
    return place === undefined ? [] : [view.at(place)];
  };
  return (
    <>
      {boat.ways
        .filter(({ ends }) => ends.some((end) => ids.has(end)))
        .map((way) => (
          <path key={way.id} className="ghost-way" d={line(way.ends.flatMap(pointOf))} />
        ))}
      {[...ids].flatMap(pointOf).map(([xMm, yMm]) => (
        <circle key={`${xMm} ${yMm}`} className="ghost-place" cx={xMm} cy={yMm} r={ringMm} />
      ))}
    </>
  );
};

/** What is in the hand in one view: it alone is drawn anew with every move, not the hundreds of marks beside it. */
const HeldInView = ({ boat, view }: { boat: Boat; view: ScaledView }): ReactNode => {
  const { inHand } = usePlaceHand();
  if (inHand === undefined) return null;
  if (inHand.kind === 'places') return <Ghosts boat={boat} view={view} ids={inHand.ids} shift={inHand.shift} />;
  if (inHand.kind !== 'way' || inHand.to === undefined) return null;
  const ends = [inHand.from, inHand.to].flatMap((id) => boat.places.find((place) => place.id === id) ?? []);
  return <path className="ghost-way" d={line(ends.map(view.at))} />;
};

const FrameBox = (): ReactNode => {
  const { inHand } = usePlaceHand();
  if (inHand?.kind !== 'frame') return null;
  const { from, to } = inHand;
  return (
    <rect
      className="pick-frame"
      x={Math.min(from[0], to[0])}
      y={Math.min(from[1], to[1])}
      width={Math.abs(from[0] - to[0])}
      height={Math.abs(from[1] - to[1])}
    />
  );
};

const namedGroup = (name: string) => ({ role: 'group', 'aria-label': name });

/** Every place and way of the boat over the drawing, in each of its views, to be picked, moved and drawn. */
export const PlaceLayer = (props: LayerProps): ReactNode => {
  const { boat, views, layer, over, lights } = props;
  const picked = useSyncExternalStore(lights.subscribe, lights.picked);
  return (
    <>
      {createPortal(
        <g className="place-layer">
          <UnderlayLayer underlays={boat.underlays ?? []} views={views} stepM={props.stepM} />
          {views.map((view) => (
            <g key={view.name} {...namedGroup(words.placesOn[view.name])}>
              <WayLines boat={boat} lights={lights} view={view} picked={picked} />
              <PlaceMarks {...props} view={view} picked={picked} />
            </g>
          ))}
        </g>,
        layer,
      )}
      {createPortal(
        <>
          {views.map((view) => (
            <HeldInView key={view.name} boat={boat} view={view} />
          ))}
          <FrameBox />
        </>,
        over,
      )}
    </>
  );
};
