import { byCodeUnit } from '../boat/ids.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { SeenEntry } from '../plan-shape.ts';
import { stepsOf } from './reach.ts';
import type { Reaches } from './reaches.ts';
import type { Refit } from './refit.ts';

/** A reading at a unit before it is known whether anything has it afterwards. */
export type Seen = Omit<SeenEntry, 'after'>;

type Way = Pick<Seen, 'by'> & { readonly instance: number | undefined };

const byLength = (a: Way, b: Way): number => a.by.length - b.by.length || byCodeUnit(a.by.join(' '), b.by.join(' '));

/** The shortest way for each instance under which a reading gets to a unit. */
const waysOf = (reaches: Reaches, kit: string, reading: ReadingId): Way[] => {
  const isShared = reading === 'chart-share';
  const own = (isShared ? [] : reaches.ownOf(kit, reading)).map(({ node, signal }) => ({
    instance: signal.instance,
    by: [node.id],
  }));
  const heard = (reaches.of(reading).heard.get(kit) ?? [])
    .filter(({ step }) => step.source.kit !== kit)
    .map(({ step }) => ({ instance: step.signal.instance, by: stepsOf(step).map(({ node }) => node.id) }));
  const shortest = new Map<number | undefined, Way>();
  for (const way of [...own, ...heard].sort(byLength)) if (!shortest.has(way.instance)) shortest.set(way.instance, way);
  return [...shortest.values()].sort((a, b) => (a.instance ?? -1) - (b.instance ?? -1));
};

/**
 * Every reading that each unit aboard in a phase takes in or has itself, of those its ports hear, by the shortest way;
 * how good it is, is not asked. Pure; sorted by reading, unit, instance.
 */
export const seenIn = ({ reachesIn }: Refit, phase: number): Seen[] => {
  const reaches = reachesIn(phase);
  const seen = [...reaches.network.nodesOf].flatMap(([at, nodes]) =>
    [...new Set(nodes.flatMap((node) => [...node.hears.keys()]))].flatMap((reading) =>
      waysOf(reaches, at, reading).map(({ instance, by }) => ({
        reading,
        ...(instance === undefined ? {} : { instance }),
        at,
        by,
      })),
    ),
  );
  return seen.sort((a, b) => byCodeUnit(a.reading, b.reading) || byCodeUnit(a.at, b.at));
};
