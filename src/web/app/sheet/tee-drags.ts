import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { type TeeOfUnit, teesOfUnit } from '../../../papers/cards/tees-of-unit.ts';
import type { Draggable, Goal } from '../../drawing/drag-on-drawing.ts';
import { markSpot, marksOf } from '../../drawing/spots.ts';
import type { MakeEdits } from '../edit-context.ts';
import { words } from './words.ts';

/** How near a finger or a mouse must come, pixels. */
const reachPx = { hold: 16, drop: 36 } as const;

/** Ports whose tee stands at each place, so that a tee can be let go at another one. */
const portsAt = (plan: Plan): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { walk } of plan.buses) {
    for (const { place, tees } of walk) found.set(place, [...(found.get(place) ?? []), ...tees]);
  }
  return found;
};

const goalsAt = (frame: HTMLElement, key: string, ids: readonly string[]): Goal[] =>
  ids
    .flatMap((id) => marksOf(frame, id))
    .map((element) => ({
      key,
      spots: [markSpot(element)],
      reachPx: reachPx.drop,
      mark: (isOver) => element.classList.toggle('drop-here', isOver),
    }));

/** The tees of the drawing, to be dragged to another place of their trunk; `say` says what each would cost and break there. */
export const teeDrags = ({
  boat,
  plan,
  frame,
  edit,
  say,
}: {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly frame: HTMLElement;
  readonly edit: MakeEdits;
  readonly say: (words: string) => void;
}): Draggable[] => {
  const names = cardBoat(boat);
  const ports = portsAt(plan);
  const draggableOf = (tee: TeeOfUnit): Draggable => {
    const moveTo = (at: string | undefined) => tee.moves.find((move) => move.at === at);
    return {
      grips: () => marksOf(frame, tee.port).map(markSpot),
      reachPx: reachPx.hold,
      goals: () => tee.moves.flatMap(({ at }) => goalsAt(frame, at, [at, ...(ports.get(at) ?? [])])),
      onOver: (at) => say(moveTo(at)?.says ?? words.otherTee(tee.says)),
      onDrop: (at) => {
        const move = moveTo(at);
        if (move !== undefined) edit(move.edits, move.title);
      },
      onLeave: () => say(''),
    };
  };
  return boat.kit.flatMap(({ id }) => teesOfUnit(names, plan, id)).map(draggableOf);
};
