import { stopsOf } from '../backbone/bus-lines.ts';
import type { BusEntry, LineEntry } from '../plan-shape.ts';
import { lineId } from '../ways/line-entry.ts';

/**
 * The trunk of a bus as a row of tees from its first end to its second. A gap is a place between two of them where it can be
 * cut: gap `n` lies before tee `n`, so gap 0 parts the first terminator from everything and the last gap the second.
 */
export interface BusTrunk {
  readonly bus: string;
  /** tees in order, by what they serve */
  readonly tees: readonly string[];
  readonly placeOf: ReadonlyMap<string, number>;
  /** where the feed is, absent where nobody knows */
  readonly feed: number | undefined;
  /** places of its two ends */
  readonly ends: readonly [string, string];
  /** gap by stretch of trunk */
  readonly gapOf: ReadonlyMap<string, number>;
}

/** The gap that each stretch bridges: named as `bus-lines` names them, a name that comes again with its number behind it. */
const gapsOf = ({ id: bus, walk }: Pick<BusEntry, 'id' | 'walk'>): Map<string, number> => {
  const gaps = new Map<string, number>();
  const times = new Map<string, number>();
  let gap = 0;
  let before: string | undefined;
  for (const { step, first, last } of stopsOf(walk)) {
    if (before !== undefined) {
      const name = lineId({ kind: 'trunk', ends: [`${bus}/${before}`, `${bus}/${first}`] });
      const seen = (times.get(name) ?? 0) + 1;
      times.set(name, seen);
      gaps.set(seen === 1 ? name : `${name}#${seen}`, gap);
    }
    gap += walk[step]?.tees.length ?? 0;
    before = last;
  }
  return gaps;
};

/** The trunk of a bus by its layout. */
export const busTrunk = (entry: Pick<BusEntry, 'id' | 'walk' | 'ends'>, lines: readonly LineEntry[]): BusTrunk => {
  const tees = entry.walk.flatMap((step) => step.tees);
  const placeOf = new Map(tees.map((tee, at) => [tee, at]));
  const known = new Set(lines.map(({ id }) => id));
  return {
    bus: entry.id,
    tees,
    placeOf,
    feed: placeOf.get('feed'),
    ends: entry.ends,
    gapOf: new Map([...gapsOf(entry)].filter(([id]) => known.has(id))),
  };
};

/** A trunk with one tee more, right behind another: stretches keep their names. */
export const withTee = (trunk: BusTrunk, tee: string, behind: number): BusTrunk => {
  const at = behind + 1;
  const tees = [...trunk.tees.slice(0, at), tee, ...trunk.tees.slice(at)];
  const placeOf = new Map(tees.map((own, place) => [own, place]));
  const gapOf = new Map([...trunk.gapOf].map(([line, gap]) => [line, gap >= at ? gap + 1 : gap]));
  return { ...trunk, tees, placeOf, feed: placeOf.get('feed'), gapOf };
};

/** What happens to a bus in one failure: gaps that open, tees that break out of the trunk, drops that come off, a short. */
export interface BusHit {
  readonly gaps: readonly number[];
  readonly tees: readonly number[];
  /** ports whose drop is off */
  readonly off: readonly string[];
  readonly shorted: boolean;
}

/** What is left of a bus: by port the part it is in, for parts that carry messages; whether those parts have one terminator only. */
export interface BusState {
  readonly partOf: ReadonlyMap<string, number>;
  readonly doubtful: boolean;
  /** ports that no power reaches any more by the trunk */
  readonly unfed: readonly string[];
  readonly feedLost: boolean;
  /** gap numbers at which the trunk still carries something on both sides */
  readonly liveGaps: ReadonlySet<number>;
}

/** The parts of the trunk between the gaps that opened, as [first tee, tee after the last]. */
const partsOf = ({ tees }: BusTrunk, opened: ReadonlySet<number>): [from: number, to: number][] => {
  const parts: [number, number][] = [];
  let from = 0;
  for (let gap = 1; gap <= tees.length; gap += 1) {
    if (gap !== tees.length && !opened.has(gap)) continue;
    parts.push([from, gap]);
    from = gap;
  }
  return parts;
};

/**
 * What a hit leaves of a bus. A part carries messages while the feed is in it and one terminator at least; with one it is
 * doubtful (source: practice). A short takes the whole bus, its power too: the fuse of the feed opens.
 */
export const busState = (trunk: BusTrunk, { gaps, tees: broken, off, shorted }: BusHit): BusState => {
  const { tees, feed } = trunk;
  const opened = new Set([...gaps, ...broken.flatMap((at) => [at, at + 1])]);
  const gone = new Set([...off, ...broken.map((at) => tees[at] ?? '')]);
  const partOf = new Map<string, number>();
  const unfed: string[] = [...off, ...broken.flatMap((at) => tees[at] ?? [])];
  const liveGaps = new Set<number>();
  let doubtful = false;
  const feedLost = shorted || (feed !== undefined && gone.has('feed'));
  for (const [part, [from, to]] of partsOf(trunk, opened).entries()) {
    const terminators = Number(from === 0 && !opened.has(0)) + Number(to === tees.length && !opened.has(tees.length));
    const isFed = !feedLost && (feed === undefined || (feed >= from && feed < to));
    const own = tees.slice(from, to).filter((tee) => !gone.has(tee));
    if (!isFed) unfed.push(...own);
    if (!isFed || terminators === 0) continue;
    if (terminators === 1) doubtful = true;
    for (const tee of own) partOf.set(tee, part);
    for (let gap = from + 1; gap < to; gap += 1) liveGaps.add(gap);
    if (from === 0 && !opened.has(0)) liveGaps.add(0);
    if (to === tees.length && !opened.has(to)) liveGaps.add(to);
  }
  return { partOf, doubtful, unfed, feedLost, liveGaps };
};
