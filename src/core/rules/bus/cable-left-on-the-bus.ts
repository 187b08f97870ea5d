import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import type { BusEntry, Level, LineEntry } from '../../plan-shape.ts';
import { keptCables } from '../../ways/line-entry.ts';
import type { Observation, Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** Kept trunk cables that the walk of the trunk has no pass for; one without ways cannot be placed. */
const trunkOffTheWalk = (index: BoatIndex, bus: BusEntry): Cable[] => {
  const passes = new Map<string, number>();
  for (const { via } of bus.walk) if (via !== undefined) passes.set(via, (passes.get(via) ?? 0) + 1);
  return keptCables({ index, serves: [bus.id], kind: 'trunk' }).filter(({ ways }) => {
    if (ways.every((way) => (passes.get(way) ?? 0) > 0)) {
      for (const way of ways) passes.set(way, (passes.get(way) ?? 0) - 1);
      return false;
    }
    return true;
  });
};

const dropWithoutUnit = (index: BoatIndex, bus: BusEntry, lines: readonly LineEntry[]): Cable[] => {
  const used = new Set(lines.flatMap(({ kept }) => kept ?? []));
  return keptCables({ index, serves: [bus.id], kind: 'drop' }).filter(({ id }) => !used.has(id));
};

interface Shape {
  readonly level: Level;
  readonly says: string;
}

/** What a trunk cable makes beside the trunk, by how many of its ends are on it. */
const trunkShapes: Readonly<Record<0 | 1 | 2, Shape>> = {
  0: { level: 'doubt', says: 'lies apart from its trunk' },
  1: { level: 'fault', says: 'hangs on its trunk as a branch: a star has no two ends for the terminators' },
  2: {
    level: 'fault',
    says: 'starts and ends on its trunk and closes a ring: a ring has no ends for the terminators, and a cut in it is never found',
  },
};
const stub: Shape = {
  level: 'doubt',
  says: 'is a drop with no unit of the plan at its end; left plugged in it counts as one',
};
const branchedDrop: Shape = {
  level: 'fault',
  says: 'is a drop that starts nowhere on the trunk, so it can only hang on another drop',
};

const shapeOf = (bus: BusEntry, { kind, from, to }: Cable): Shape => {
  const isOn = (place: string): boolean => bus.walk.some((step) => step.place === place);
  const ends = Number(isOn(from.place)) + Number(isOn(to.place));
  if (kind === 'drop') return ends === 0 ? branchedDrop : stub;
  return trunkShapes[ends === 2 ? 2 : ends === 1 ? 1 : 0];
};

/** A cable that stays, serves a bus and is no part of it as laid out: a ring, a branch or a stub that nobody drew. */
export const cableLeftOnTheBus: Rule = {
  id: 'bus/cable-left-on-the-bus',
  level: 'fault',
  title: 'A cable that stays makes a ring, a branch or a stub of a bus.',
  sources: ['practice-bus-limits', 'practice-terminators'],
  check: ({ index, plan }) =>
    plan.buses.flatMap((bus) => {
      // a layout that is only proposed may yet be pinned to lie where the old trunk lies
      const isPinned = index.boat.pins?.layouts?.[bus.id] !== undefined;
      const left = [...trunkOffTheWalk(index, bus), ...dropWithoutUnit(index, bus, plan.lines)];
      return left.map((cable): Observation => {
        const { level, says } = shapeOf(bus, cable);
        return {
          about: [bus.id, cable.id],
          level: isPinned ? level : 'doubt',
          says: `The cable ${cable.name ?? cable.id} is to stay and serve ${busName(index, bus.id)}, but ${says}.`,
          cure: isPinned
            ? 'Unplug it at both ends and enter it as going, or change the fixed layout so that the trunk runs through it.'
            : 'Fix the layout so that the bus uses it, or enter it as going.',
        };
      });
    }),
};
