import type { BoatIndex } from '../boat/boat-index.ts';
import { splitDotted } from '../boat/ids.ts';
import type { BusEntry } from '../plan-shape.ts';
import { keptCables } from '../ways/line-entry.ts';

/** Terminators that a bus holds on its drops: in units (`kit.port`), and in kept cables (ids). */
export interface StrayTerminators {
  readonly ports: readonly string[];
  readonly cables: readonly string[];
}

/** Units that hold a terminator and hang at neither end of the trunk, and kept drops that carry one. */
export const strayTerminators = (index: BoatIndex, bus: BusEntry): StrayTerminators => ({
  ports: bus.walk
    .slice(1, -1)
    .flatMap((step) => step.tees)
    .filter((tee) => tee !== 'feed' && index.sheetOf.get(splitDotted(tee).kit)?.terminator === true),
  cables: keptCables({ index, serves: [bus.id], kind: 'drop' })
    .filter(({ terminator }) => terminator === true)
    .map(({ id }) => id),
});
