import { type ReactNode, type RefObject, useEffect, useMemo, useState } from 'react';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../../papers/cards/card-boat.ts';
import { type TeeOfUnit, teesOfUnit } from '../../papers/cards/tees-of-unit.ts';
import { type Draggable, dragOnDrawing } from '../drawing/drag-on-drawing.ts';
import { useEdit } from './edit-context.ts';
import './tee-drag.css';
import { useWords } from './words/units.ts';

/** Ports whose tee stands at each place, so that a tee can be let go at another one. */
const portsAt = (plan: Plan): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { walk } of plan.buses) {
    for (const { place, tees } of walk) found.set(place, [...(found.get(place) ?? []), ...tees]);
  }
  return found;
};

const draggableOf = (tee: TeeOfUnit, ports: ReadonlyMap<string, readonly string[]>): Draggable => ({
  id: tee.port,
  goals: new Map(tee.moves.map((move) => [move.at, [move.at, ...(ports.get(move.at) ?? [])]])),
});

/** Tees of the drawing under the hand: dragged to another place of the trunk one says what it would cost and break, and settles there. */
export const TeeDrag = ({
  boat,
  plan,
  frame,
}: {
  boat: Boat;
  plan: Plan;
  frame: RefObject<HTMLDivElement | null>;
}): ReactNode => {
  const edit = useEdit();
  const words = useWords();
  const [says, setSays] = useState('');
  const tees = useMemo(() => {
    const names = cardBoat(boat);
    const all = boat.kit.flatMap(({ id }) => teesOfUnit(names, plan, id));
    return new Map(all.map((tee) => [tee.port, tee]));
  }, [boat, plan]);
  useEffect(() => {
    if (frame.current === null) return undefined;
    const ports = portsAt(plan);
    const moveOf = (port: string, at: string) => tees.get(port)?.moves.find((move) => move.at === at);
    return dragOnDrawing(frame.current, {
      draggables: [...tees.values()].map((tee) => draggableOf(tee, ports)),
      onOver: (port, at) =>
        setSays(
          (at === undefined ? undefined : moveOf(port, at)?.says) ??
            `${tees.get(port)?.says ?? ''} Let go over another tee to move it.`,
        ),
      onDrop: (port, at) => {
        const move = moveOf(port, at);
        if (move !== undefined) edit(move.edits, move.title);
      },
      onLeave: () => setSays(''),
    });
  }, [tees, plan, frame, edit]);
  return (
    <p className="drag-says" role="status" hidden={says === ''}>
      {words(says)}
    </p>
  );
};
