import type { BoatIndex } from '../boat/boat-index.ts';
import type { Cable, LineKind } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { lengthMm } from '../boat/measure.ts';
import type { LineEntry } from '../plan-shape.ts';
import { routePin } from './pinned-routes.ts';
import { addLengths, type LineRoute, type Router } from './routes.ts';
import type { WayLength } from './way-lengths.ts';

/** A line that cannot be drawn: no way allowed to it leads from one end to the other. `serves` names its joins, circuit or bus. */
export interface LineGap {
  readonly kind: LineKind;
  readonly from: string;
  readonly to: string;
  readonly serves: readonly string[];
}

/** One end of a line: what it is called in the line's id, and the place it is at. */
export interface LineEnd {
  readonly name: string;
  readonly place: string;
}

/**
 * The id of a line: kind and both ends, the ends in order of their code units, so that it is the same from either side.
 *
 * @example lineId({ kind: 'drop', ends: ['nav', 'display.bus'] }) // 'drop:display.bus~nav'
 */
export const lineId = ({ kind, ends }: { readonly kind: LineKind; readonly ends: readonly [string, string] }): string =>
  `${kind}:${[...ends].sort(byCodeUnit).join('~')}`;

/** A new line laid along a route, tails at both ends added; the route runs from the first end to the second. */
export const laidLine = ({
  index,
  kind,
  ends,
  route,
  tails,
}: {
  readonly index: BoatIndex;
  readonly kind: LineKind;
  readonly ends: readonly [LineEnd, LineEnd];
  readonly route: LineRoute;
  readonly tails: readonly WayLength[];
}): LineEntry =>
  lineEntry({ index, kind, ends, places: route.places, ways: route.ways, length: addLengths([route, ...tails]) });

/**
 * The line that kept cables make: those of `cables` that lie end to end from one place to the other, or (`loose`) the only
 * one there is, wherever it was entered to end. It has their ways and their own lengths.
 * Absent where they do not reach.
 */
export const keptLine = ({
  index,
  router,
  kind,
  ends,
  cables,
  loose = false,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly kind: LineKind;
  readonly ends: readonly [LineEnd, LineEnd];
  readonly cables: readonly Cable[];
  readonly loose?: boolean;
}): LineEntry | undefined => {
  const chain = cableChain({ cables, from: ends[0].place, to: ends[1].place }) ?? (loose ? onlyOne(cables) : undefined);
  const first = chain?.[0];
  if (chain === undefined || first === undefined) return undefined;
  const ways = chain.flatMap(({ cable, backwards }) => (backwards ? [...cable.ways].reverse() : cable.ways));
  const start = first.backwards ? first.cable.to.place : first.cable.from.place;
  const places = router.along({ from: start, ways })?.places ?? ends.map(({ place }) => place);
  const length = addLengths(
    chain.map(({ cable: { length: own } }) => {
      const { nominalMm, longestMm } = lengthMm(own);
      return { mm: nominalMm, longestMm, guessed: own.how === 'guessed' };
    }),
  );
  return lineEntry({ index, kind, ends, places, ways, length, kept: chain.map(({ cable }) => cable.id) });
};

/** Cables kept for a join, a bus or a circuit, of one kind of line, sorted by id. */
export const keptCables = ({
  index,
  serves,
  kind,
}: {
  readonly index: BoatIndex;
  readonly serves: readonly string[];
  readonly kind: LineKind;
}): readonly Cable[] =>
  index.boat.cables
    .filter((cable) => cable.fate === 'stays' && cable.kind === kind)
    .filter((cable) => cable.serves !== undefined && serves.includes(cable.serves))
    .sort((one, other) => byCodeUnit(one.id, other.id));

interface Link {
  readonly cable: Cable;
  readonly backwards: boolean;
}

const cableChain = ({
  cables,
  from,
  to,
}: {
  readonly cables: readonly Cable[];
  readonly from: string;
  readonly to: string;
}): readonly Link[] | undefined => {
  for (const cable of cables) {
    const backwards = cable.to.place === from;
    if (!backwards && cable.from.place !== from) continue;
    const end = backwards ? cable.from.place : cable.to.place;
    if (end === to) return [{ cable, backwards }];
    const rest = cableChain({ cables: cables.filter((other) => other !== cable), from: end, to });
    if (rest !== undefined) return [{ cable, backwards }, ...rest];
  }
  return undefined;
};

const onlyOne = (cables: readonly Cable[]): readonly Link[] | undefined =>
  cables.length === 1 ? cables.map((cable) => ({ cable, backwards: false })) : undefined;

const lineEntry = ({
  index,
  kind,
  ends: [one, other],
  places,
  ways,
  length,
  kept,
}: {
  readonly index: BoatIndex;
  readonly kind: LineKind;
  readonly ends: readonly [LineEnd, LineEnd];
  readonly places: readonly string[];
  readonly ways: readonly string[];
  readonly length: WayLength;
  readonly kept?: string[];
}): LineEntry => {
  const id = lineId({ kind, ends: [one.name, other.name] });
  const forth = byCodeUnit(one.name, other.name) <= 0;
  const pin = kept === undefined ? routePin(index.boat, id) : undefined;
  const isAsPinned =
    pin !== undefined && [pin.ways, pin.ways.toReversed()].some((order) => order.join() === ways.join());
  const label =
    index.boat.labels !== undefined && Object.hasOwn(index.boat.labels, id) ? index.boat.labels[id] : undefined;
  return {
    id,
    ...(label === undefined ? {} : { label }),
    kind,
    from: forth ? one.name : other.name,
    to: forth ? other.name : one.name,
    places: forth ? [...places] : [...places].reverse(),
    ways: forth ? [...ways] : [...ways].reverse(),
    lengthM: length.mm / 1000,
    longestM: length.longestMm / 1000,
    guessed: length.guessed,
    ...(isAsPinned ? { pinned: pin.state } : {}),
    ...(kept === undefined ? {} : { kept }),
  };
};
