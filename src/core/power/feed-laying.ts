import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineEntry } from '../plan-shape.ts';

/** How a feed lies as far as its heat goes: any of it in an engine space; conductors loaded together in its fullest bundle. */
export interface FeedLaying {
  readonly engineSpace: boolean;
  readonly carryingConductors: number;
}

/** Copper that flows out and back in one feed. */
const conductorsOfFeed = 2;

/** How many feeds lie in each way when the work is done. */
const feedsByWay = (lines: readonly LineEntry[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { kind, ways } of lines) {
    if (kind !== 'feed' && kind !== 'feeder') continue;
    for (const way of new Set(ways)) counts.set(way, (counts.get(way) ?? 0) + 1);
  }
  return counts;
};

/**
 * How each feed lies: hot where a place or way it passes is in an engine space; its bundle is the way with most feeds, and
 * each feed counts two conductors. Feeders that stay are not reckoned: they carry what their feeds do.
 */
export const feedLaying = (index: BoatIndex, lines: readonly LineEntry[]): ((line: LineEntry) => FeedLaying) => {
  const counts = feedsByWay(lines);
  const isHot = ({ places, ways }: LineEntry): boolean =>
    places.some((id) => index.places.get(id)?.exposure === 'engine') ||
    ways.some((id) => index.ways.get(id)?.exposure === 'engine');
  return (line) => ({
    engineSpace: isHot(line),
    carryingConductors: conductorsOfFeed * Math.max(1, ...line.ways.map((way) => counts.get(way) ?? 1)),
  });
};
