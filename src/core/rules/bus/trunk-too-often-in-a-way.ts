import { trunkTimes } from '../../ways/allowed-lines.ts';
import type { Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** A trunk laid out and back needs room for two cables; a mast or a gland has room for one. */
export const trunkTooOftenInAWay: Rule = {
  id: 'bus/trunk-too-often-in-a-way',
  level: 'fault',
  title: 'The trunk runs through a way more often than it has room for.',
  sources: ['project-layout'],
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) => {
      const passes = new Map<string, number>();
      for (const { via } of bus.walk) if (via !== undefined) passes.set(via, (passes.get(via) ?? 0) + 1);
      return [...passes].flatMap(([id, times]) => {
        const way = index.ways.get(id);
        const most = way === undefined ? times : trunkTimes(way);
        if (way === undefined || times <= most) return [];
        const [a, b] = way.ends.map((place) => index.places.get(place)?.name ?? place);
        return [
          {
            about: [bus.id, way.id],
            says: `The trunk of ${busName(index, bus.id)} runs ${times === 2 ? 'twice' : `${times} times`} through the ${way.kind} from ${a} to ${b}, which takes it ${most === 0 ? 'not at all' : most === 1 ? 'once' : 'twice'}.`,
            measured: { value: times, unit: 'passes' },
            cure: 'End the trunk there instead of coming back, or serve what is beyond by a drop; if two cables do fit, say so on the way.',
          },
        ];
      });
    }),
};
