import { awayFrom, type Spot } from './spots.ts';

/** A place on the drawing that something can be let go at. */
export interface Goal {
  readonly key: string;
  readonly spots: readonly Spot[];
  /** how near a finger or a mouse must come, pixels */
  readonly reachPx: number;
  /** shows on the drawing whether something is held over it */
  readonly mark?: (isOver: boolean) => void;
}

/** Something on the drawing that can be taken hold of; `key` is that of the goal it is over, absent over none. */
export interface Draggable {
  /** where it can be taken hold of, measured anew at every press */
  readonly grips: () => readonly Spot[];
  readonly reachPx: number;
  /** taken hold of by its balloon, which is pressed as well: only a press that moves holds it */
  readonly byBalloon?: true;
  /** where it can be let go; of two that are in reach the first counts where both are as near */
  readonly goals: () => readonly Goal[];
  readonly onOver: (key: string | undefined) => void;
  readonly onDrop: (key: string) => void;
  readonly onLeave: () => void;
}

/** A press that moves less is none. */
const leastMovePx = 5;

interface Reachable {
  readonly spots: readonly Spot[];
  readonly reachPx: number;
}

/** Of all that is in reach of the pointer the nearest; points go before stretches, which lie everywhere between them. */
const inReach = <One>(
  all: readonly One[],
  { clientX, clientY }: PointerEvent,
  of: (one: One) => Reachable,
): One | undefined => {
  const at = { x: clientX, y: clientY };
  const found = all.flatMap((one) =>
    of(one).spots.flatMap((spot) => {
      const awayPx = awayFrom(spot, at);
      const isPoint = spot.from === spot.to;
      return awayPx > of(one).reachPx ? [] : [{ one, awayPx, turn: isPoint ? 0 : 1 }];
    }),
  );
  const [first] = found.sort((one, other) => one.turn - other.turn || one.awayPx - other.awayPx);
  return first?.one;
};

interface Held {
  readonly draggable: Draggable;
  readonly goals: readonly Goal[];
  readonly from: { readonly x: number; readonly y: number };
  isMoving: boolean;
  over: Goal | undefined;
}

/**
 * Lets things of a drawing be dragged, by mouse, pen or finger, and leaves everything else on it alone.
 * Escape lets go of what is held. Gives a function that ends it.
 */
export const dragOnDrawing = (frame: HTMLElement, draggables: readonly Draggable[]): (() => void) => {
  let held: Held | undefined;
  const end = new AbortController();
  const listen = <Name extends keyof HTMLElementEventMap>(
    name: Name,
    hear: (event: HTMLElementEventMap[Name]) => void,
  ): void => frame.addEventListener(name, hear, { capture: true, signal: end.signal });

  const letGo = (): void => {
    const was = held;
    held = undefined;
    was?.over?.mark?.(false);
    frame.classList.remove('dragging', 'hand-high');
    was?.draggable.onLeave();
  };

  listen('pointerdown', (event) => {
    if (!event.isPrimary || event.button !== 0) return;
    const isBalloon = event.target instanceof Element && event.target.closest('.balloon') !== null;
    const likely = draggables.filter(({ byBalloon = false }) => byBalloon === isBalloon);
    const draggable = inReach(likely, event, (one) => ({ spots: one.grips(), reachPx: one.reachPx }));
    if (draggable === undefined) return;
    const from = { x: event.clientX, y: event.clientY };
    held = { draggable, goals: draggable.goals(), from, isMoving: false, over: undefined };
    // a pointer that is caught here would no longer press the balloon
    if (!isBalloon) frame.setPointerCapture(event.pointerId);
  });
  // The sheet pans by these; while something is held it stays where it is.
  for (const name of ['mousedown', 'touchstart'] as const) {
    listen(name, (event) => {
      if (held === undefined) return;
      event.stopPropagation();
      // a page that scrolls under a finger would take it away
      if (name === 'touchstart' && held.draggable.byBalloon !== true) event.preventDefault();
    });
  }
  listen('pointermove', (event) => {
    if (held === undefined) return;
    const movedPx = Math.hypot(event.clientX - held.from.x, event.clientY - held.from.y);
    if (!held.isMoving && movedPx < leastMovePx) return;
    if (!held.isMoving) frame.setPointerCapture(event.pointerId);
    held.isMoving = true;
    frame.classList.add('dragging');
    // what is said stands where the hand is not
    frame.classList.toggle('hand-high', event.clientY < window.innerHeight / 2);
    const over = inReach(held.goals, event, (goal) => goal);
    if (over !== held.over) {
      held.over?.mark?.(false);
      over?.mark?.(true);
    }
    held.over = over;
    held.draggable.onOver(over?.key);
  });
  listen('pointerup', () => {
    if (held === undefined) return;
    const { draggable, over, isMoving } = held;
    letGo();
    if (isMoving && over !== undefined) draggable.onDrop(over.key);
  });
  listen('pointercancel', letGo);
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape' || held === undefined) return;
      // on the sheet it would let go of what is picked as well
      event.stopPropagation();
      letGo();
    },
    { capture: true, signal: end.signal },
  );
  return () => {
    if (held !== undefined) letGo();
    end.abort();
  };
};
