import { daySlots, type Ground, type GroundJob } from './ground.ts';
import { lastDayOf, type Spot } from './spot.ts';

const noEnd = -1;

/**
 * Which half hours of which hands are taken, and which jobs lie where. `find` looks for the earliest place of a job from a
 * clock on, in the gaps too; `put` and `lift` take it in and out.
 */
export class Timeline {
  readonly ground: Ground;
  readonly spots: (Spot | undefined)[];
  private readonly taken: readonly Uint8Array[];
  private readonly free: readonly Int32Array[];

  constructor(ground: Ground) {
    this.ground = ground;
    this.spots = ground.jobs.map(() => undefined);
    this.taken = ground.present.map(() => new Uint8Array(ground.days * ground.perDay));
    this.free = ground.present.map((days) => Int32Array.from(days, (is) => (is === 1 ? ground.perDay : 0)));
  }

  /** The earliest clock at which the jobs before are done and waited for. */
  ready(job: number): number {
    let clock = 0;
    for (const { job: before, wait } of this.ground.jobs[job]?.preds ?? []) {
      const spot = this.spots[before];
      if (spot !== undefined && spot.end + wait > clock) clock = spot.end + wait;
    }
    return clock;
  }

  /** The earliest spot from a clock on, and no later than another; hands that come first in the problem break ties. */
  find(number: number, fromClock: number, latest = Number.POSITIVE_INFINITY): Spot | undefined {
    const job = this.ground.jobs[number];
    if (job === undefined) return undefined;
    let best: Spot | undefined;
    for (const hands of job.handSets) {
      const spot = this.findFor(job, hands, fromClock, best === undefined ? latest : best.begin - 1);
      if (spot !== undefined) best = spot;
    }
    return best;
  }

  /** The latest spot between two clocks, both for its beginning. */
  findLast(number: number, fromClock: number, latest: number): Spot | undefined {
    const { from, days } = this.ground;
    const job = this.ground.jobs[number];
    if (job === undefined) return undefined;
    for (
      let day = Math.min(days - 1, Math.floor(latest / daySlots));
      day >= Math.floor(fromClock / daySlots);
      day -= 1
    ) {
      if (!job.handSets.some((hands) => this.isOpen(job, hands, day))) continue;
      const base = day * daySlots + from;
      const lastSlot = job.days > 0 ? 0 : Math.min(this.ground.perDay - job.slots, latest - base);
      for (let slot = lastSlot; slot >= Math.max(0, fromClock - base); slot -= 1) {
        const spot = this.find(number, base + slot, base + slot);
        if (spot !== undefined) return spot;
      }
    }
    return undefined;
  }

  /** The earliest spot from a clock on for certain hands. */
  findFor(job: GroundJob, hands: readonly number[], fromClock: number, latest: number): Spot | undefined {
    const { from } = this.ground;
    const firstDay = Math.max(job.first, Math.floor(fromClock / daySlots));
    const lastDay = Math.min(job.last, job.lastBegin, Math.floor((latest - from) / daySlots));
    if (job.days > 0) {
      const isTooLate = fromClock > firstDay * daySlots + from;
      return this.longSpot(job, hands, isTooLate ? firstDay + 1 : firstDay, lastDay);
    }
    for (let day = firstDay; day <= lastDay; day += 1) {
      if (!this.isOpen(job, hands, day)) continue;
      const base = day * daySlots + from;
      const found = this.slotOn(job, hands, day, Math.max(0, fromClock - base));
      if (found === noEnd || this.isApartOn(job, day, day)) continue;
      if (base + found > latest) return undefined;
      return { begin: base + found, end: base + found + job.slots, hands };
    }
    return undefined;
  }

  private isOpen(job: GroundJob, hands: readonly number[], day: number): boolean {
    const { to, from } = job.window;
    const room = (to[day] ?? -1) - (from[day] ?? 0);
    if (room < 0 || (job.slots > 0 && room < (job.days > 0 ? 1 : job.slots))) return false;
    for (const hand of hands) {
      const free = this.free[hand]?.[day] ?? 0;
      if (free < (job.days > 0 ? this.ground.perDay : job.slots)) return false;
    }
    return true;
  }

  /** The first half hour of a day from one on at which all the hands are free as long as the job lasts. */
  private slotOn(job: GroundJob, hands: readonly number[], day: number, fromSlot: number): number {
    const { perDay } = this.ground;
    const end = job.window.to[day] ?? -1;
    let slot = Math.max(fromSlot, job.window.from[day] ?? 0);
    let length = 0;
    if (job.slots === 0) return slot <= end ? slot : noEnd;
    for (let at = slot; at < end; at += 1) {
      let isTaken = false;
      for (const hand of hands) if (this.taken[hand]?.[day * perDay + at] === 1) isTaken = true;
      if (isTaken) {
        length = 0;
        slot = at + 1;
      } else {
        length += 1;
        if (length === job.slots) return slot;
      }
    }
    return noEnd;
  }

  /** The earliest spot of a job of several days that begins with one of some days. */
  private longSpot(job: GroundJob, hands: readonly number[], first: number, last: number): Spot | undefined {
    let begin = first;
    while (begin <= last) {
      if (!this.isOpen(job, hands, begin)) {
        begin += 1;
        continue;
      }
      const { end, blockedOn } = this.longEnd(job, hands, begin);
      if (blockedOn === undefined) return { begin: begin * daySlots + this.ground.from, end, hands };
      begin = blockedOn + 1;
    }
    return undefined;
  }

  /**
   * Where a job of several days ends that begins with a day: after as many days on which it is fit and all its hands are there.
   * Else the last day with which it cannot begin: what is in its way there is in the way of every beginning before, as that
   * would come to the day with more left to do; and where the days run out they do for each beginning after it.
   */
  private longEnd(
    job: GroundJob,
    hands: readonly number[],
    begin: number,
  ): { readonly end: number; readonly blockedOn?: number } {
    const { perDay, from, present } = this.ground;
    let left = job.days;
    for (let day = begin; day <= job.last; day += 1) {
      const isThere = hands.every((hand) => present[hand]?.[day] === 1);
      for (const hand of hands) {
        if (present[hand]?.[day] === 1 && (this.free[hand]?.[day] ?? 0) < perDay) return { end: noEnd, blockedOn: day };
      }
      if (!isThere || (job.window.to[day] ?? -1) <= (job.window.from[day] ?? 0)) continue;
      left -= 1;
      if (left > 0) continue;
      return this.isApartOn(job, begin, day)
        ? { end: noEnd, blockedOn: begin }
        : { end: day * daySlots + from + perDay };
    }
    return { end: noEnd, blockedOn: job.last };
  }

  private isApartOn(job: GroundJob, firstDay: number, lastDay: number): boolean {
    for (const other of job.apart) {
      const spot = this.spots[other];
      if (spot === undefined) continue;
      const first = Math.floor(spot.begin / daySlots);
      const last = lastDayOf(spot);
      if (first <= lastDay && last >= firstDay) return true;
    }
    return false;
  }

  put(job: number, spot: Spot): void {
    this.spots[job] = spot;
    this.mark(spot, 1);
  }

  lift(job: number): void {
    const spot = this.spots[job];
    if (spot === undefined) return;
    this.spots[job] = undefined;
    this.mark(spot, 0);
  }

  clear(): void {
    for (let job = 0; job < this.spots.length; job += 1) if (this.spots[job] !== undefined) this.lift(job);
  }

  private mark(spot: Spot, value: 0 | 1): void {
    if (spot.end === spot.begin) return;
    const { perDay, from } = this.ground;
    for (const hand of spot.hands) {
      for (let day = Math.floor(spot.begin / daySlots); day <= lastDayOf(spot); day += 1) {
        const base = day * daySlots + from;
        const first = Math.max(0, spot.begin - base);
        const end = Math.min(perDay, spot.end - base);
        this.taken[hand]?.fill(value, day * perDay + first, day * perDay + end);
        const free = this.free[hand];
        if (free !== undefined && this.ground.present[hand]?.[day] === 1)
          free[day] = (free[day] ?? 0) + (value === 1 ? first - end : end - first);
      }
    }
  }
}
