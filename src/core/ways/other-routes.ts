import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import type { LineEntry } from '../plan-shape.ts';
import { type LineRoute, makeRouter, type Router } from './routes.ts';

type Other = NonNullable<LineEntry['other']>;

/** A router for each way that is left out, made when first asked for. */
const routersWithout = (index: BoatIndex): ((way: string) => Router) => {
  const known = new Map<string, Router>();
  return (way) => {
    const ways = index.boat.ways.filter(({ id }) => id !== way);
    const router = known.get(way) ?? makeRouter({ ...index, boat: { ...index.boat, ways } });
    known.set(way, router);
    return router;
  };
};

/** Lines that a person may lead another way: new ones that no bus lays. */
const mayGoElsewhere = ({ boat }: BoatIndex, { kind, kept, from, to }: LineEntry): boolean =>
  kept === undefined && kind !== 'trunk' && kind !== 'drop' && !boat.buses.some(({ id }) => id === from || id === to);

const otherOf = (
  without: (way: string) => Router,
  { kind, places, ways, lengthM, longestM }: LineEntry,
  now: LineRoute,
) => {
  const [from = '', to = ''] = [places[0], places.at(-1)];
  const [best] = [...new Set(ways)]
    .flatMap((way) => without(way).cheapest({ kind, from, to }) ?? [])
    .sort((one, other) => one.mm - other.mm || byCodeUnit(one.ways.join(), other.ways.join()));
  if (best === undefined) return undefined;
  const other: Other = {
    places: [...best.places],
    ways: [...best.ways],
    lengthM: lengthM + (best.mm - now.mm) / 1000,
    longestM: longestM + (best.longestMm - now.longestMm) / 1000,
  };
  return other;
};

interface Asked {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
}

/**
 * For each new line that no bus lays the shortest route that leaves out one of its ways or more, by line id: where a person
 * could lead it instead. Lines that can go one way only have none.
 */
export const otherRoutes: (asked: Asked) => ReadonlyMap<string, Other> = remember({
  most: 4,
  keyOf: ({ index: { boat }, lines }: Asked) =>
    JSON.stringify([
      boat.ways,
      boat.places,
      lines.map(({ id, ways, kept, lengthM, longestM }) => [id, ways, kept, lengthM, longestM]),
    ]),
  find: ({ index, lines }) => {
    const without = routersWithout(index);
    const router = makeRouter(index);
    return new Map(
      lines
        .filter((line) => mayGoElsewhere(index, line))
        .flatMap((line): [string, Other][] => {
          const now = router.along({ from: line.places[0] ?? '', ways: line.ways });
          const other = now === undefined ? undefined : otherOf(without, line, now);
          return other === undefined ? [] : [[line.id, other]];
        }),
    );
  },
});
