import { costOfSpots, type SpotCost } from './darkness.ts';
import { daySlots, type Ground, type Link } from './ground.ts';
import { Hopes, type HopesAsk } from './hopes.ts';
import type { FoundOrder } from './improve.ts';
import type { Spot } from './spot.ts';
import { Timeline } from './timeline.ts';

/** What the search goes by: an order that is better than `below`. */
export interface ExactAsk extends HopesAsk {
  readonly below: SpotCost;
  /** the search ends at a cost like this */
  readonly isEnough: (cost: SpotCost) => boolean;
}

export interface ExactEnd {
  readonly found?: FoundOrder;
  /** whether everything was tried, so that nothing is better than what was found, or than `below` */
  readonly isWhole: boolean;
}

/**
 * Tries every order that could be better than one known, job by job in the order in which they begin. Four things need not be
 * tried. A job that ends no way of a function and is not aloft begins as soon as it can, once what begins before it stands: it
 * could be moved there, and nothing would cost more. Of hands that are alike, the first. And whatever would at best be as dark,
 * as late and as often aloft as the best order so far. Likewise what ends a way and gives none ends with its day or with the
 * beginning of something that needs its hands or waits for it: else it could as well be done later on that day.
 */
export const exactSearch = (ask: ExactAsk, purse: { left: number }): ExactEnd => {
  const search = new ExactSearch(ask, purse);
  search.visit(0, -1, 0);
  return { ...(search.found === undefined ? {} : { found: search.found }), isWhole: purse.left > 0 || search.isEnded };
};

class ExactSearch {
  found: FoundOrder | undefined;
  isEnded = false;
  private readonly ask: ExactAsk;
  private readonly purse: { left: number };
  private readonly timeline: Timeline;
  private readonly hopes: Hopes;
  private readonly freeAt: Float64Array;
  private readonly kinds: readonly number[];
  /** jobs that end a way, give none, last no longer than a day, and have nothing wait for them beyond their end */
  private readonly watched: readonly number[];
  private best: SpotCost;

  constructor(ask: ExactAsk, purse: { left: number }) {
    this.ask = ask;
    this.purse = purse;
    this.timeline = new Timeline(ask.ground);
    this.hopes = new Hopes(ask);
    this.freeAt = new Float64Array(ask.ground.hands);
    this.kinds = kindsOfHands(ask.ground);
    this.watched = ask.order.filter((job) => {
      const own = ask.ground.jobs[job];
      return (
        own?.ends === true && !own.gives && own.days === 0 && own.slots > 0 && own.succs.every(({ wait }) => wait === 0)
      );
    });
    this.best = ask.below;
  }

  visit(clock: number, lastJob: number, placed: number): void {
    this.purse.left -= 1;
    if (this.purse.left <= 0 || this.isEnded || this.isIdle(clock) || this.isHopeless(clock)) return;
    const { ground, order } = this.ask;
    if (placed === ground.jobs.length) {
      this.take();
      return;
    }
    for (const job of order) {
      if (this.timeline.spots[job] !== undefined || !this.isReady(job)) continue;
      const seen = new Set<string>();
      for (const hands of ground.jobs[job]?.handSets ?? []) {
        const key = this.alike(hands);
        if (seen.has(key)) continue;
        seen.add(key);
        this.branch({ job, hands, clock, lastJob, placed });
        if (this.purse.left <= 0 || this.isEnded) return;
      }
    }
  }

  private branch({ job, hands, clock, lastJob, placed }: Branch): void {
    const own = this.ask.ground.jobs[job];
    if (own === undefined) return;
    let from = Math.max(clock, this.timeline.ready(job));
    // Two that begin at once are tried in one order only: by number, but that one may wait for the other.
    if (from === clock && job < lastJob && !own.preds.some((link) => link.job === lastJob)) from = clock + 1;
    for (;;) {
      const spot = this.timeline.findFor(own, hands, from, Number.POSITIVE_INFINITY);
      if (spot === undefined) return;
      this.put(job, spot, placed);
      if (this.purse.left <= 0 || this.isEnded) return;
      if (own.ends) from = spot.begin + 1;
      else if (own.aloft) from = (Math.floor(spot.begin / daySlots) + 1) * daySlots;
      else return;
    }
  }

  private put(job: number, spot: Spot, placed: number): void {
    const before = spot.hands.map((hand) => this.freeAt[hand] ?? 0);
    for (const hand of spot.hands) this.freeAt[hand] = spot.end;
    this.timeline.put(job, spot);
    this.visit(spot.begin, job, placed + 1);
    this.timeline.lift(job);
    for (const [n, hand] of spot.hands.entries()) this.freeAt[hand] = before[n] ?? 0;
  }

  private isReady(job: number): boolean {
    for (const { job: before } of this.ask.ground.jobs[job]?.preds ?? [])
      if (this.timeline.spots[before] === undefined) return false;
    return true;
  }

  private alike(hands: readonly number[]): string {
    return hands
      .map((hand) => `${this.kinds[hand]}@${this.freeAt[hand]}`)
      .sort()
      .join();
  }

  private take(): void {
    const cost = costOfSpots(this.ask.ground, this.timeline.spots);
    if (cost.hardDark > 0 || !this.isLess(cost)) return;
    this.best = cost;
    this.found = { cost, spots: this.timeline.spots.flatMap((spot) => spot ?? []) };
    this.isEnded = this.ask.isEnough(cost);
  }

  private isLess({ dark, lastDay, ascents }: Pick<SpotCost, 'dark' | 'lastDay' | 'ascents'>): boolean {
    const { best } = this;
    if (best.hardDark > 0) return true;
    if (dark !== best.dark) return dark < best.dark;
    return lastDay !== best.lastDay ? lastDay < best.lastDay : ascents < best.ascents;
  }

  private isHopeless(clock: number): boolean {
    const least = this.hopes.least(this.timeline, this.freeAt, clock);
    return least === undefined || !this.isLess(least);
  }

  /** Whether some job that ends a way could as well be done later on its day, now that all is placed that begins with its end. */
  private isIdle(clock: number): boolean {
    const { ground } = this.ask;
    for (const job of this.watched) {
      const spot = this.timeline.spots[job];
      const own = ground.jobs[job];
      if (spot === undefined || own === undefined || spot.end >= clock) continue;
      const day = Math.floor(spot.begin / daySlots);
      if (spot.end >= day * daySlots + ground.from + (own.window.to[day] ?? 0)) continue;
      if (!this.isMet(own.succs, spot)) return true;
    }
    return false;
  }

  private isMet(succs: readonly Link[], spot: Spot): boolean {
    const { spots } = this.timeline;
    if (succs.some(({ job }) => spots[job]?.begin === spot.end)) return true;
    return spots.some((other) => other?.begin === spot.end && other.hands.some((hand) => spot.hands.includes(hand)));
  }
}

interface Branch {
  readonly job: number;
  readonly hands: readonly number[];
  readonly clock: number;
  readonly lastJob: number;
  readonly placed: number;
}

/** A number for each hand, the same for hands that can be changed for each other. */
const kindsOfHands = ({ problem, present }: Ground): number[] => {
  const named = new Set(problem.jobs.flatMap(({ hand }) => hand ?? []));
  const keys = problem.hands.map(({ id, can }, n) =>
    named.has(id) ? id : `${can.join()}/${present[n]?.join('') ?? ''}`,
  );
  return keys.map((key) => keys.indexOf(key));
};
