import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { lineWires } from '../joins/line-wires.ts';
import type { LineEntry } from '../plan-shape.ts';
import { joinLines } from '../ways/join-lines.ts';
import { makeRouter } from '../ways/routes.ts';

/** The lines of a boat that are no bus, with their wires, as a plan has them. */
export const planBoat = (boat: Boat): { readonly lines: readonly LineEntry[] } => {
  const index = indexBoat(boat);
  const joins = joinsOf(index, 1);
  const { lines, linesOf } = joinLines({ index, router: makeRouter(index), joins });
  return {
    lines: lines.map((line) => ({
      ...line,
      wires: lineWires(
        index,
        joins.filter(({ id }) => linesOf.get(id)?.includes(line.id) === true),
        [line.from, line.to],
      ),
    })),
  };
};
