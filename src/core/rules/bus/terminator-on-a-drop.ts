import type { BoatIndex } from '../../boat/boat-index.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

const says = (index: BoatIndex, bus: BusEntry, what: string): string =>
  `${what} on a drop of ${busName(index, bus.id)}. A third terminator pulls the bus to about 40 ohm; one that stands in for a missing end reads 60 ohm and is in the wrong place.`;
const cure = 'Take it out, or bring the end of the trunk to it; two terminators, one at each end.';

/** Units that hold a terminator and hang at neither end of the trunk. */
const inUnits = (index: BoatIndex, bus: BusEntry): Observation[] =>
  bus.walk
    .slice(1, -1)
    .flatMap((step) => step.tees)
    .filter((tee) => index.sheetOf.get(tee.split('.')[0] ?? '')?.terminator === true)
    .map((port) => ({
      about: [bus.id, port],
      says: says(index, bus, `${unitName(index, port)} holds a terminator and hangs`),
      cure,
    }));

/** Cables that stay, serve this bus as drops, and carry a terminator. */
const inCables = (index: BoatIndex, bus: BusEntry): Observation[] =>
  [...index.cables.values()]
    .filter(
      (cable) =>
        cable.fate === 'stays' && cable.terminator === true && cable.kind === 'drop' && cable.serves === bus.id,
    )
    .map((cable) => ({
      about: [bus.id, cable.id],
      says: says(index, bus, `The cable ${cable.name ?? cable.id} has a terminator and lies`),
      cure,
    }));

/** Two terminators at the two ends, and nowhere else; one on a drop hides until the bus is long or wet. */
export const terminatorOnADrop: Rule = {
  id: 'bus/terminator-on-a-drop',
  level: 'fault',
  title: 'A terminator sits on a drop.',
  sources: ['practice-terminators'],
  check: ({ index, plan }) => plan.buses.flatMap((bus) => [...inUnits(index, bus), ...inCables(index, bus)]),
};
