/** A place on the drawing that something can be let go at, in pixels of the window. */
interface Target {
  readonly key: string;
  readonly element: Element;
  readonly x: number;
  readonly y: number;
}

/** Something on the drawing that can be taken hold of. */
export interface Draggable {
  /** id by which it is found on the drawing */
  readonly id: string;
  /** ids by which the places for it are found, by the key of each */
  readonly goals: ReadonlyMap<string, readonly string[]>;
}

/** What happens while something is dragged; `key` is that of the goal it is over, absent over none. */
export interface DragHand {
  readonly draggables: readonly Draggable[];
  readonly onOver: (id: string, key: string | undefined) => void;
  readonly onDrop: (id: string, key: string) => void;
  readonly onLeave: () => void;
}

/** How near a finger or a mouse must come, pixels. */
const near = { hold: 16, drop: 36 } as const;
/** A press that moves less is none. */
const leastMovePx = 5;

const centreOf = (element: Element): { x: number; y: number } => {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
};

/** The small marks that stand for an id: not the balloons, which are pressed, nor long lines. */
const marksOf = (frame: Element, id: string): Element[] =>
  [...frame.querySelectorAll(`[data-about~="${CSS.escape(id)}"]`)].filter((element) => {
    const { width, height } = element.getBoundingClientRect();
    return !element.closest('.balloon') && width < 30 && height < 30;
  });

const nearest = <At extends { readonly x: number; readonly y: number }>(
  all: readonly At[],
  { clientX, clientY }: PointerEvent,
  withinPx: number,
): At | undefined => {
  const away = ({ x, y }: At): number => Math.hypot(x - clientX, y - clientY);
  const [first] = [...all].sort((one, other) => away(one) - away(other));
  return first !== undefined && away(first) <= withinPx ? first : undefined;
};

interface Held {
  readonly draggable: Draggable;
  readonly targets: readonly Target[];
  readonly from: { readonly x: number; readonly y: number };
  isMoving: boolean;
  over: Target | undefined;
}

/**
 * Lets small marks of a drawing be dragged to others, by mouse, pen or finger, and leaves everything else on it alone.
 * Escape lets go of what is held. Gives a function that ends it.
 */
export const dragOnDrawing = (frame: HTMLElement, hand: DragHand): (() => void) => {
  let held: Held | undefined;
  const end = new AbortController();
  const listen = <Name extends keyof HTMLElementEventMap>(
    name: Name,
    hear: (event: HTMLElementEventMap[Name]) => void,
  ): void => frame.addEventListener(name, hear, { capture: true, signal: end.signal });

  const letGo = (): void => {
    held?.over?.element.classList.remove('drop-here');
    held = undefined;
    frame.classList.remove('dragging');
    hand.onLeave();
  };
  const targetsFor = ({ goals }: Draggable): Target[] =>
    [...goals].flatMap(([key, ids]) =>
      ids.flatMap((id) => marksOf(frame, id).map((element) => ({ key, element, ...centreOf(element) }))),
    );

  listen('pointerdown', (event) => {
    if (!event.isPrimary || event.button !== 0) return;
    const marks = hand.draggables.flatMap((draggable) =>
      marksOf(frame, draggable.id).map((element) => ({ draggable, ...centreOf(element) })),
    );
    const found = nearest(marks, event, near.hold);
    if (found === undefined || (event.target instanceof Element && event.target.closest('.balloon'))) return;
    const { draggable } = found;
    const from = { x: event.clientX, y: event.clientY };
    held = { draggable, targets: targetsFor(draggable), from, isMoving: false, over: undefined };
    frame.setPointerCapture(event.pointerId);
  });
  // The sheet pans by these; while a mark is held it stays where it is.
  for (const name of ['mousedown', 'touchstart'] as const) {
    listen(name, (event) => {
      if (held !== undefined) event.stopPropagation();
    });
  }
  listen('pointermove', (event) => {
    if (held === undefined) return;
    const movedPx = Math.hypot(event.clientX - held.from.x, event.clientY - held.from.y);
    if (!held.isMoving && movedPx < leastMovePx) return;
    held.isMoving = true;
    frame.classList.add('dragging');
    const over = nearest(held.targets, event, near.drop);
    if (over?.element !== held.over?.element) {
      held.over?.element.classList.remove('drop-here');
      over?.element.classList.add('drop-here');
    }
    held.over = over;
    hand.onOver(held.draggable.id, over?.key);
  });
  listen('pointerup', () => {
    if (held === undefined) return;
    const { draggable, over, isMoving } = held;
    letGo();
    if (isMoving && over !== undefined) hand.onDrop(draggable.id, over.key);
  });
  listen('pointercancel', letGo);
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key === 'Escape' && held !== undefined) letGo();
    },
    { signal: end.signal },
  );
  return () => {
    if (held !== undefined) letGo();
    end.abort();
  };
};
