import { daySlots, type Ground, type GroundFunction } from './ground.ts';
import type { Spot } from './spot.ts';

/** Clocks between which something is dark. */
export interface DarkSpan {
  readonly from: number;
  readonly to: number;
}

const countedTo = ({ counts, countsBefore }: GroundFunction, clock: number): number => {
  const day = Math.floor(clock / daySlots);
  return (countsBefore[day] ?? 0) * daySlots + (counts[day] === 1 ? clock - day * daySlots : 0);
};

/** The half hours that count between two clocks. */
export const counted = (one: GroundFunction, from: number, to: number): number =>
  to <= from ? 0 : countedTo(one, to) - countedTo(one, from);

/**
 * The times in which no way of a function holds, up to the end of the calendar. A job without a spot is taken to come never,
 * so that with some jobs placed this is dark at most until they all are: what is not dark yet may become so.
 */
export const darkSpans = (one: GroundFunction, spots: readonly (Spot | undefined)[], end: number): DarkSpan[] => {
  const lit: DarkSpan[] = [];
  for (const { from, until } of one.ways) {
    let on = 0;
    for (const job of from) on = Math.max(on, spots[job]?.end ?? end);
    let off = end;
    for (const job of until) off = Math.min(off, spots[job]?.begin ?? end);
    if (on < off) lit.push({ from: on, to: off });
  }
  lit.sort((a, b) => a.from - b.from);
  const dark: DarkSpan[] = [];
  let at = 0;
  for (const { from, to } of lit) {
    if (from > at) dark.push({ from: at, to: from });
    at = Math.max(at, to);
  }
  if (at < end) dark.push({ from: at, to: end });
  return dark;
};

/** What one function is dark, in half hours that count. */
export const darkOf = (one: GroundFunction, spots: readonly (Spot | undefined)[], end: number): number =>
  darkSpans(one, spots, end).reduce((sum, { from, to }) => sum + counted(one, from, to), 0);

/** What a ground’s jobs at their spots cost, and how long functions are dark that never may be. */
export interface SpotCost {
  readonly hardDark: number;
  readonly dark: number;
  readonly lastDay: number;
  readonly ascents: number;
  /** the sum of all ends, which tells apart what costs the same */
  readonly ends: number;
}

/** The cost of an order of which every job has its spot. */
export const costOfSpots = (ground: Ground, spots: readonly (Spot | undefined)[]): SpotCost => {
  const end = ground.days * daySlots;
  let [dark, hardDark] = [0, 0];
  for (const one of ground.functions) {
    const own = darkOf(one, spots, end);
    dark += own;
    if (one.hard) hardDark += own;
  }
  let [lastDay, ends] = [0, 0];
  const aloft = new Set<number>();
  for (let job = 0; job < spots.length; job += 1) {
    const spot = spots[job];
    if (spot === undefined) continue;
    const last = spot.end === spot.begin ? spot.begin : spot.end - 1;
    const lastOne = Math.floor(last / daySlots);
    if (lastOne > lastDay) lastDay = lastOne;
    ends += spot.end;
    if (ground.jobs[job]?.aloft !== true) continue;
    for (let day = Math.floor(spot.begin / daySlots); day <= lastOne; day += 1)
      if (ground.isMastUp[day] === 1) aloft.add(day);
  }
  return { hardDark, dark, lastDay, ascents: aloft.size, ends };
};

/** Below 0 where the first costs less: what never may be dark first, then dark half hours, last day, ascents. */
export const compareCosts = (a: SpotCost, b: SpotCost): number =>
  a.hardDark - b.hardDark || a.dark - b.dark || a.lastDay - b.lastDay || a.ascents - b.ascents;
