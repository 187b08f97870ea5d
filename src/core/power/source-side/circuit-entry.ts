import type { BoatIndex } from '../../boat/boat-index.ts';
import { splitDotted } from '../../boat/ids.ts';
import { isAboard } from '../../boat/phase.ts';
import type { Circuit, Panel } from '../../boat/supply.ts';
import type { CircuitEntry } from '../../panels-shape.ts';
import { ratingOf } from '../size-feed.ts';
import { type Draws, drawEntry } from './draw.ts';

/** Whether what a circuit names is aboard in a phase: a unit by its fate, everything else always. */
export const isThere = (index: BoatIndex, target: string, phase: number): boolean => {
  if (!target.includes('.')) return true;
  const unit = index.kit.get(splitDotted(target).kit);
  return unit !== undefined && isAboard(unit, phase);
};

/** Whether a circuit is kept for later: it feeds nothing and has no name, or is named so. */
const isSpare = ({ name, feeds }: Circuit): boolean =>
  feeds.length === 0 && (name === undefined || name.toLowerCase() === 'spare');

/** Whether a circuit can be taken for something else from a phase on: it is spare, or all that it fed has left for good. */
export const isFree = (
  index: BoatIndex,
  circuit: Circuit,
  { phase, last }: { readonly phase: number; readonly last: number },
): boolean => {
  if (isSpare(circuit)) return true;
  if (circuit.feeds.length === 0) return false;
  const later = Array.from({ length: Math.max(0, last - phase) + 1 }, (_, at) => phase + at);
  return circuit.feeds.every((target) => later.every((at) => !isThere(index, target, at)));
};

/** What the plan tells of one circuit when the refit is done. */
export const circuitEntry = ({
  index,
  draws,
  panel,
  circuit,
  last,
}: {
  readonly index: BoatIndex;
  readonly draws: Draws;
  readonly panel: Panel;
  readonly circuit: Circuit;
  readonly last: number;
}): CircuitEntry => ({
  circuit: circuit.id,
  ...(circuit.name === undefined ? {} : { name: circuit.name }),
  kind: circuit.kind,
  ratingA: ratingOf(index, { panel, circuit }),
  feeds: circuit.feeds.filter((target) => isThere(index, target, last)),
  free: isFree(index, circuit, { phase: last, last }),
  ...(circuit.interruptA === undefined ? {} : { interruptA: circuit.interruptA }),
  ...drawEntry(draws.circuit(panel, circuit)),
});
