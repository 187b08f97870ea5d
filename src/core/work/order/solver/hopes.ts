import { darkOf, type SpotCost } from './darkness.ts';
import { daySlots, type Ground } from './ground.ts';
import type { Heads } from './heads.ts';
import type { Spot } from './spot.ts';
import type { Timeline } from './timeline.ts';

/** What a bound on an order that is not whole yet stands on. */
export interface HopesAsk {
  readonly ground: Ground;
  readonly heads: Heads;
  /** jobs, each behind all it waits for */
  readonly order: readonly number[];
  /** what each function is dark at least, whatever the order */
  readonly leastDark: readonly number[];
}

/**
 * What an order that goes on from some placed jobs costs at least: every job still open begins and ends as soon as it could if it
 * were alone, what ends a way comes never, and hands do all that is left without a gap.
 */
export class Hopes {
  private readonly ask: HopesAsk;
  private readonly ends: Float64Array;
  private readonly hoped: Spot[] = [];

  constructor(ask: HopesAsk) {
    this.ask = ask;
    this.ends = new Float64Array(ask.ground.jobs.length);
  }

  /** Absent where some job comes too late, or something is dark that never may be. */
  least(
    timeline: Timeline,
    freeAt: Float64Array,
    clock: number,
  ): Pick<SpotCost, 'dark' | 'lastDay' | 'ascents'> | undefined {
    const { ground, leastDark } = this.ask;
    const end = ground.days * daySlots;
    const latest = this.latestEnd(timeline, freeAt, clock);
    if (latest > end) return undefined;
    let dark = 0;
    for (const [n, one] of ground.functions.entries()) {
      const own = Math.max(darkOf(one, this.hoped, end), leastDark[n] ?? 0);
      if (one.hard && own > 0) return undefined;
      dark += own;
    }
    const lastDay = Math.max(Math.floor(Math.max(0, latest - 1) / daySlots), this.dayOfWork(timeline, freeAt, clock));
    return { dark, lastDay, ascents: ascentsSoFar(ground, timeline) };
  }

  private latestEnd({ spots }: Timeline, freeAt: Float64Array, clock: number): number {
    const { ground, heads, order } = this.ask;
    const { ends, hoped } = this;
    const horizon = ground.days * daySlots;
    let latest = 0;
    for (const job of order) {
      const spot = spots[job];
      if (spot !== undefined) {
        ends[job] = spot.end;
        hoped[job] = spot;
      } else {
        let ready = Math.max(clock, handsFree(ground, job, freeAt));
        for (const { job: before, wait } of ground.jobs[job]?.preds ?? [])
          ready = Math.max(ready, (ends[before] ?? 0) + wait);
        ends[job] = heads.endOf(job, heads.beginFrom(job, ready));
        hoped[job] = { begin: horizon, end: ends[job] ?? 0, hands: [] };
      }
      latest = Math.max(latest, ends[job] ?? 0);
    }
    return latest;
  }

  /** The day on which all that is left could be done, if every hand worked on from where it is free. */
  private dayOfWork({ spots }: Timeline, freeAt: Float64Array, clock: number): number {
    const { jobs, present, perDay, from, days } = this.ask.ground;
    let left = 0;
    for (const [n, job] of jobs.entries())
      if (spots[n] === undefined) left += job.slots * (job.handSets[0]?.length ?? 0);
    let day = Math.floor(clock / daySlots);
    for (; left > 0 && day < days; day += 1) {
      const base = day * daySlots + from;
      for (const [hand, own] of present.entries()) {
        if (own[day] !== 1) continue;
        const used = Math.max(0, Math.max(clock, freeAt[hand] ?? 0) - base);
        left -= Math.max(0, perDay - used);
      }
    }
    return Math.max(0, day - 1);
  }
}

const handsFree = ({ jobs }: Ground, job: number, freeAt: Float64Array): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const set of jobs[job]?.handSets ?? []) {
    let free = 0;
    for (const hand of set) free = Math.max(free, freeAt[hand] ?? 0);
    least = Math.min(least, free);
  }
  return Number.isFinite(least) ? least : 0;
};

const ascentsSoFar = ({ jobs, isMastUp }: Ground, { spots }: Timeline): number => {
  const days = new Set<number>();
  for (const [job, spot] of spots.entries()) {
    if (spot === undefined || jobs[job]?.aloft !== true) continue;
    for (let day = Math.floor(spot.begin / daySlots); day * daySlots < spot.end; day += 1)
      if (isMastUp[day] === 1) days.add(day);
  }
  return days.size;
};
