import { costOfSpots, darkOf, type SpotCost } from './darkness.ts';
import { daySlots, type Ground } from './ground.ts';
import type { Slices } from './slices.ts';
import type { Spot } from './spot.ts';
import { Timeline } from './timeline.ts';

/** Jobs in the order in which they are given places, and what is kept to besides. */
export interface Recipe {
  readonly list: readonly number[];
  /** jobs that are given their places before all, each with what it must wait for: there are few for them */
  readonly firsts: readonly number[];
  /** stretches are done within a day where that leaves less dark; on free days too, on which nothing of them counts */
  readonly stretches: 'split' | 'whole' | 'free';
  /** new ways come before old ones go, where they can */
  readonly isEased: boolean;
}

/** Days tried for a stretch of jobs that leave something dark. */
const triedDays = 6;

/** Days tried besides on which nothing of a stretch counts, so that it may be dark. */
const triedFreeDays = 8;

interface Placed {
  readonly dark: number;
  readonly begin: number;
  readonly last: number;
  readonly spots: readonly (Spot | undefined)[];
}

const isBetter = (a: Placed, b: Placed): boolean => a.dark < b.dark || (a.dark === b.dark && a.last < b.last);

const freeAfter = (free: readonly number[], floor: number): number | undefined => free.find((clock) => clock > floor);

/** Clocks at which the first days begin on which some hand works and none of some functions count. */
const freeDaysOf = ({ functions, present, days }: Ground, watchers: readonly number[]): number[] => {
  const isFree = (day: number): boolean =>
    watchers.every((n) => functions[n]?.counts[day] !== 1) && present.some((own) => own[day] === 1);
  const free = Array.from({ length: days }, (_, day) => day).filter((day) => day > 0 && isFree(day));
  return free.slice(0, triedFreeDays).map((day) => day * daySlots);
};

/** Gives each job of a list the earliest place that is left, one after another, and each stretch the day that leaves it least dark. */
export class Decoder {
  readonly ground: Ground;
  readonly slices: Slices;
  readonly timeline: Timeline;
  private readonly watchers: readonly (readonly number[])[];
  private readonly freeDays: readonly (readonly number[])[];
  private readonly end: number;
  /** the last job that found no place */
  failed = 0;
  /** places given so far */
  work = 0;

  constructor(ground: Ground, slices: Slices) {
    this.ground = ground;
    this.slices = slices;
    this.timeline = new Timeline(ground);
    this.end = ground.days * daySlots;
    this.watchers = slices.groups.map((group) =>
      group.every((job) => ground.jobs[job]?.ends !== true || (group.length < 2 && ground.jobs[job]?.gives !== true))
        ? []
        : ground.functions.flatMap(({ ways }, n) =>
            ways.some(({ from, until }) => [...from, ...until].some((job) => group.includes(job))) ? [n] : [],
          ),
    );
    this.freeDays = this.watchers.map((own) => (own.length === 0 ? [] : freeDaysOf(ground, own)));
  }

  /** The cost of a recipe, its spots left in the timeline; absent where a job finds no place. */
  decode(recipe: Recipe): SpotCost | undefined {
    this.timeline.clear();
    for (const job of recipe.firsts) if (!this.placeAlone(job)) return undefined;
    for (const job of recipe.list) {
      if (this.timeline.spots[job] === undefined && !this.place(job, recipe)) return undefined;
    }
    return costOfSpots(this.ground, this.timeline.spots);
  }

  private placeAlone(job: number): boolean {
    if (this.timeline.spots[job] !== undefined) return true;
    for (const { job: before } of this.ground.jobs[job]?.preds ?? []) if (!this.placeAlone(before)) return false;
    return this.putEarliest(job, 0);
  }

  private place(job: number, recipe: Recipe): boolean {
    const { groupOf, groups, before } = this.slices;
    const group = groupOf[job] ?? job;
    const whole = recipe.stretches !== 'split' ? (groups[group] ?? [job]) : [job];
    const members = whole.filter((member) => this.timeline.spots[member] === undefined);
    for (const member of members) {
      for (const { job: needed } of this.ground.jobs[member]?.preds ?? [])
        if (!this.isThere(needed, members) && !this.place(needed, recipe)) return false;
      if (recipe.isEased)
        for (const eased of before[member] ?? [])
          if (!this.isThere(eased, members) && !this.place(eased, recipe)) return false;
    }
    if (members.length < 2 && (recipe.stretches === 'split' || this.watchers[group]?.length === 0))
      return this.putEarliest(job, 0);
    return this.placeGroup(group, members, recipe);
  }

  private isThere(job: number, members: readonly number[]): boolean {
    return this.timeline.spots[job] !== undefined || (members.length > 1 && members.includes(job));
  }

  private putEarliest(job: number, floor: number): boolean {
    this.work += 1;
    const spot = this.timeline.find(job, Math.max(floor, this.timeline.ready(job)));
    if (spot === undefined) {
      this.failed = job;
      return false;
    }
    this.timeline.put(job, spot);
    return true;
  }

  /** Tries the days from the earliest on, and those on which nothing of the stretch counts, and keeps the least dark. */
  private placeGroup(group: number, members: readonly number[], recipe: Recipe): boolean {
    const order = this.inner(members, recipe);
    const free = recipe.stretches === 'free' ? (this.freeDays[group] ?? []) : [];
    let best: Placed | undefined;
    let floor: number | undefined = 0;
    for (let tried = 0; floor !== undefined; tried += 1) {
      const placed = this.tryGroup(group, order, floor);
      if (placed !== undefined && (best === undefined || isBetter(placed, best))) best = placed;
      if (best?.dark === 0 || (placed === undefined && tried < triedDays)) break;
      const begun = placed === undefined ? 0 : Math.floor(placed.begin / daySlots) + 1;
      const next = Math.max(Math.floor(((placed?.last ?? 1) - 1) / daySlots), begun) * daySlots;
      floor = tried < triedDays - 1 ? next : freeAfter(free, tried === triedDays - 1 ? 0 : floor);
    }
    if (best === undefined) return false;
    for (const [n, member] of order.entries()) {
      const spot = best.spots[n];
      if (spot !== undefined) this.timeline.put(member, spot);
    }
    return true;
  }

  private tryGroup(group: number, order: readonly number[], floor: number): Placed | undefined {
    const isPlaced = order.every((member) => this.putEarliest(member, floor));
    const spots = order.map((member) => this.timeline.spots[member]);
    const dark = isPlaced ? this.darkOf(group) : 0;
    for (const member of order) this.timeline.lift(member);
    if (!isPlaced) return undefined;
    const last = Math.max(...spots.map((spot) => spot?.end ?? 0));
    const begin = Math.min(...spots.map((spot) => spot?.begin ?? 0));
    return { dark, last, begin, spots };
  }

  private darkOf(group: number): number {
    let sum = 0;
    for (const n of this.watchers[group] ?? []) {
      const one = this.ground.functions[n];
      if (one !== undefined) sum += darkOf(one, this.timeline.spots, this.end) * (one.hard ? 1000 : 1);
    }
    return sum;
  }

  /** Members of a stretch as the list has them, each behind what it waits for. */
  private inner(members: readonly number[], { list, isEased }: Recipe): readonly number[] {
    const at = new Map(list.map((job, n) => [job, n]));
    const sorted = [...members].sort((a, b) => (at.get(a) ?? 0) - (at.get(b) ?? 0));
    const order: number[] = [];
    const visit = (job: number): void => {
      if (order.includes(job)) return;
      for (const { job: needed } of this.ground.jobs[job]?.preds ?? []) if (members.includes(needed)) visit(needed);
      if (isEased) for (const eased of this.slices.before[job] ?? []) if (members.includes(eased)) visit(eased);
      order.push(job);
    };
    for (const job of sorted) visit(job);
    return order;
  }
}
