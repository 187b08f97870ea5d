import { strayTerminators } from '../../backbone/stray-terminators.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

const observed = (index: BoatIndex, bus: BusEntry, holder: string, what: string): Observation => ({
  about: [bus.id, holder],
  says: `${what} on a drop of ${busName(index, bus.id)}. A third terminator pulls the bus to about 40 ohm; one that stands in for a missing end reads 60 ohm and is in the wrong place.`,
  cure: 'Take it out, or bring the end of the trunk to it; two terminators, one at each end.',
});

/** Two terminators at the two ends, and nowhere else; one on a drop hides until the bus is long or wet. */
export const terminatorOnADrop: Rule = {
  id: 'bus/terminator-on-a-drop',
  level: 'fault',
  title: 'A terminator sits on a drop.',
  sources: ['practice-terminators'],
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) => {
      const { ports, cables } = strayTerminators(index, bus);
      return [
        ...ports.map((port) => observed(index, bus, port, `${unitName(index, port)} holds a terminator and hangs`)),
        ...cables.map((id) =>
          observed(index, bus, id, `The cable ${index.cables.get(id)?.name ?? id} has a terminator and lies`),
        ),
      ];
    }),
};
