import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineEntry, MastEntry } from '../plan-shape.ts';

/**
 * One place where a line is labelled: near an end of it, on one side of a bulkhead or deck it goes through, or on one side of
 * where the cables of a mast are parted. `place` is absent at an end of a line without a route. `ways`: the bulkhead or deck
 * it stands at; two where the line comes in by one and leaves by another, and one label between them is on a side of both.
 * `end` of a half: the end of the line it goes to.
 */
export type LabelSpot =
  | { readonly at: 'end'; readonly end: string; readonly far: string; readonly place?: string }
  | {
      readonly at: 'barrier';
      readonly side: 'near' | 'far' | 'between';
      readonly ways: readonly string[];
      readonly place: string;
    }
  | { readonly at: 'break'; readonly half: 'boat' | 'mast'; readonly place: string; readonly end: string };

type Line = Pick<LineEntry, 'id' | 'from' | 'to' | 'places' | 'ways'>;

/** How many ways lie between a place on the route and the next way inside a mast, one way along it or the other. */
const waysToMast = (index: BoatIndex, ways: readonly string[]): number => {
  const found = ways.findIndex((id) => index.ways.get(id)?.kind === 'mast');
  return found < 0 ? Number.POSITIVE_INFINITY : found;
};

/** Both halves of a line that is parted at the place `at` on its route, in the order in which the route meets them. */
const breakSpots = (index: BoatIndex, { from, to, places, ways }: Line, at: number): LabelSpot[] => {
  const place = places[at];
  if (place === undefined) return [];
  const isMastFirst = waysToMast(index, ways.slice(0, at).reverse()) < waysToMast(index, ways.slice(at));
  const halves = isMastFirst ? (['mast', 'boat'] as const) : (['boat', 'mast'] as const);
  return halves.map((half, which) => ({ at: 'break', half, place, end: which === 0 ? from : to }));
};

/** The spots at one place of a route: behind what the line came through, at the joint, before what it goes through next. */
const spotsAt = (index: BoatIndex, line: Line, { at, isParted }: { at: number; isParted: boolean }): LabelSpot[] => {
  const place = line.places[at] ?? '';
  const barrier = (way: string | undefined): string[] =>
    way === undefined || index.ways.get(way)?.through === undefined ? [] : [way];
  const [behind, before] = [barrier(line.ways[at - 1]), barrier(line.ways[at])];
  if (behind.length > 0 && before.length > 0 && !isParted)
    return [{ at: 'barrier', side: 'between', ways: [...behind, ...before], place }];
  return [
    ...behind.map((way): LabelSpot => ({ at: 'barrier', side: 'far', ways: [way], place })),
    ...(isParted ? breakSpots(index, line, at) : []),
    ...before.map((way): LabelSpot => ({ at: 'barrier', side: 'near', ways: [way], place })),
  ];
};

const endSpot = (end: string, far: string, place: string | undefined): LabelSpot => ({
  at: 'end',
  end,
  far,
  ...(place === undefined ? {} : { place }),
});

/**
 * Every spot where a line is labelled, from its first end to its second: one at each end, one on each side of every bulkhead
 * or deck (a way that goes through something), one on each side of where the cables of a mast are parted (practice-labels).
 * What is bought and what is printed are counted by this.
 *
 * @example labelSpots(index, line, plan.masts).length // 4, where it goes through one bulkhead
 */
export const labelSpots = (
  index: BoatIndex,
  line: Line,
  masts: readonly Pick<MastEntry, 'breakAt' | 'lines'>[],
): LabelSpot[] => {
  const parted = new Set(
    masts.flatMap(({ breakAt, lines }) => (lines.some((own) => own.line === line.id) ? (breakAt ?? []) : [])),
  );
  const between = line.places.flatMap((place, at) => spotsAt(index, line, { at, isParted: parted.has(place) }));
  return [endSpot(line.from, line.to, line.places[0]), ...between, endSpot(line.to, line.from, line.places.at(-1))];
};
