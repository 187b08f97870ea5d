import { type ReactNode, useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { type Draggable, dragOnDrawing } from '../../../drawing/drag-on-drawing.ts';
import { awayFrom, type Spot } from '../../../drawing/spots.ts';
import { useEdit } from '../../edit-context.ts';
import { ringPath } from '../../sheet/ring-path.ts';
import type { SheetPoints } from '../../sheet/route-drag.ts';
import { useWords } from '../../words/units.ts';
import type { OnSheetProps } from '../step.ts';
import { sayOfHand, useKitHand } from './kit-hand.ts';
import { placeGoals } from './place-goals.ts';
import { setSheetOnPage } from './sheet-on-page.ts';
import { words } from './words.ts';
import '../../sheet/route-ghost.css';
import '../../sheet/sheet-drag.css';

const nothing: SheetPoints = [];
const holdPx = 16;

/** The balloons that stand for a unit, each with its label, from end to end. */
const balloonsOf = (frame: HTMLElement, unit: string): Spot[] =>
  [...frame.querySelectorAll(`.balloon[data-about~="${CSS.escape(unit)}"]`)].map((balloon) => {
    const { left, right, top, bottom } = balloon.getBoundingClientRect();
    const y = (top + bottom) / 2;
    return { from: { x: left, y }, to: { x: right, y } };
  });

interface AtPress {
  readonly boat: Boat;
  readonly points: SheetPoints;
  readonly edit: ReturnType<typeof useEdit>;
}

/** Every unit with a balloon, to be dragged to another place. */
const unitDrags = (frame: HTMLElement, { boat, points, edit }: AtPress): Draggable[] => {
  const names = new Map(boat.places.map(({ id, name }) => [id, name]));
  return boat.kit.map(
    ({ id: unit, name, place: from }): Draggable => ({
      byBalloon: true,
      grips: () => balloonsOf(frame, unit),
      reachPx: holdPx,
      goals: () => placeGoals(frame, points, boat.places),
      onOver: (key) => sayOfHand(key === undefined ? words.held(name) : words.heldOver(name, names.get(key) ?? key)),
      onDrop: (place) => {
        if (place !== from)
          edit([{ edit: 'move-unit', params: { unit, place } }], words.movedTo(name, names.get(place) ?? place));
      },
      onLeave: () => sayOfHand(''),
    }),
  );
};

const useUnitDrags = ({ boat, frame, points = nothing }: OnSheetProps): void => {
  const edit = useEdit();
  // a plan that comes while a unit is in the hand does not take it away
  const latest = useRef<AtPress>({ boat, points, edit });
  latest.current = { boat, points, edit };
  useEffect(() => {
    const window = frame.current;
    return window === null ? undefined : dragOnDrawing(window, () => unitDrags(window, latest.current));
  }, [frame]);
  useEffect(() => {
    const window = frame.current;
    if (window === null) return undefined;
    setSheetOnPage({ frame: window, points });
    return () => setSheetOnPage(undefined);
  }, [frame, points]);
};

/** While a sheet is picked a press near a place puts it there. */
const usePlacePress = ({ boat, frame, points = nothing }: OnSheetProps): void => {
  const { picked } = useKitHand();
  useEffect(() => {
    const window = frame.current;
    if (window === null || picked === undefined) return undefined;
    const press = (event: MouseEvent): void => {
      const at = { x: event.clientX, y: event.clientY };
      const [nearest] = placeGoals(window, points, boat.places)
        .flatMap(({ key, spots, reachPx }) =>
          spots.map((spot) => ({ key, awayPx: awayFrom(spot, at) })).filter(({ awayPx }) => awayPx <= reachPx),
        )
        .sort((a, b) => a.awayPx - b.awayPx);
      if (nearest === undefined) return;
      event.stopPropagation();
      picked.place(nearest.key);
    };
    window.addEventListener('click', press, { capture: true });
    return () => window.removeEventListener('click', press, { capture: true });
  }, [boat, frame, points, picked]);
};

/** The drawing under the hand at the step Kit: units are dragged to another place, and what is picked is put at one. */
export const KitOnSheet = (given: OnSheetProps): ReactNode => {
  const { frame, points = nothing } = given;
  const hand = useKitHand();
  const say = useWords();
  useUnitDrags(given);
  usePlacePress(given);
  const isHeld = hand.picked !== undefined || hand.says !== undefined;
  const layer = isHeld ? (frame.current?.querySelector('.sheet-layer') ?? null) : null;
  const rings = points.flatMap((view) => [...view.values()]).map(ringPath);
  return (
    <>
      <div className="drag-says" role="status" hidden={hand.says === undefined}>
        {hand.says === undefined ? null : <p>{say(hand.says)}</p>}
      </div>
      {layer === null
        ? null
        : createPortal(
            <g className="route-ghost">
              <path className="route-goals" d={rings.join('')} />
            </g>,
            layer,
          )}
    </>
  );
};
