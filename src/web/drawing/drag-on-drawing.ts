import { type At, awayFrom, type Spot } from './spots.ts';

/** A place on the drawing that something can be let go at. */
export interface Goal {
  readonly key: string;
  readonly spots: readonly Spot[];
  /** how near a finger or a mouse must come, pixels */
  readonly reachPx: number;
  /** shows on the drawing whether something is held over it */
  readonly mark?: (isOver: boolean) => void;
}

/** A hand on the drawing, in pixels of the window: where it took hold, where it is, and the keys held with it. */
export interface Hand {
  readonly from: At;
  readonly at: At;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly isTouch: boolean;
}

/** What everything that can be taken hold of has in common. */
interface Grippable {
  /** where it can be taken hold of, measured anew at every press; `anywhere` is the paper where nothing else is in reach */
  readonly grips: () => readonly Spot[] | 'anywhere';
  readonly reachPx: number;
  /** taken hold of by its balloon, which is pressed as well: only a press that moves holds it */
  readonly byBalloon?: true;
  /** whether it is for such a press at all; it is for every one unless this says no */
  readonly isFor?: (hand: Hand) => boolean;
  /** a press that moved nothing */
  readonly onPress?: (hand: Hand) => void;
  readonly onLeave: () => void;
}

/** Something that is let go at one of several goals; `key` is that of the goal it is over, absent over none. */
interface Aimed extends Grippable {
  /** where it can be let go; of two that are in reach the first counts where both are as near */
  readonly goals: () => readonly Goal[];
  readonly onOver: (key: string | undefined) => void;
  readonly onDrop: (key: string) => void;
}

/** Something that follows the hand and is let go anywhere. */
interface Free extends Grippable {
  readonly onMove: (hand: Hand) => void;
  readonly onPut: (hand: Hand) => void;
}

/** Something on the drawing that can be taken hold of. */
export type Draggable = Aimed | Free;

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
  readonly from: At;
  isMoving: boolean;
  over: Goal | undefined;
}

const handOf = ({ clientX, clientY, shiftKey, altKey, pointerType }: PointerEvent, from?: At): Hand => {
  const at = { x: clientX, y: clientY };
  return { from: from ?? at, at, shiftKey, altKey, isTouch: pointerType === 'touch' };
};

/** What a press takes hold of: the nearest that is in reach, else what can be taken anywhere. */
const heldBy = (event: PointerEvent, draggables: readonly Draggable[]): Draggable | undefined => {
  const hand = handOf(event);
  const all = draggables
    .filter(({ isFor }) => isFor?.(hand) !== false)
    .map((one) => ({ one, grips: one.grips(), reachPx: one.reachPx }));
  const near = inReach(all, event, ({ grips, reachPx }) => ({ spots: grips === 'anywhere' ? [] : grips, reachPx }));
  return (near ?? all.find(({ grips }) => grips === 'anywhere'))?.one;
};

/**
 * Lets things of a drawing be dragged, by mouse, pen or finger, and leaves everything else on it alone.
 * Escape lets go of what is held. Gives a function that ends it.
 */
export const dragOnDrawing = (
  frame: HTMLElement,
  /** all there is, or what gives it at each press, so that a drag outlives a drawing that changes under it */
  draggables: readonly Draggable[] | (() => readonly Draggable[]),
): (() => void) => {
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
    const likely = (typeof draggables === 'function' ? draggables() : draggables).filter(
      ({ byBalloon = false }) => byBalloon === isBalloon,
    );
    const draggable = heldBy(event, likely);
    if (draggable === undefined) return;
    const { from } = handOf(event);
    const goals = 'goals' in draggable ? draggable.goals() : [];
    held = { draggable, goals, from, isMoving: false, over: undefined };
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
    if ('onMove' in held.draggable) {
      held.draggable.onMove(handOf(event, held.from));
      return;
    }
    const over = inReach(held.goals, event, (goal) => goal);
    if (over !== held.over) {
      held.over?.mark?.(false);
      over?.mark?.(true);
    }
    held.over = over;
    held.draggable.onOver(over?.key);
  });
  listen('pointerup', (event) => {
    if (held === undefined) return;
    const { draggable, over, isMoving, from } = held;
    letGo();
    if (!isMoving) draggable.onPress?.(handOf(event, from));
    else if ('onPut' in draggable) draggable.onPut(handOf(event, from));
    else if (over !== undefined) draggable.onDrop(over.key);
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
