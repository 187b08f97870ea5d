import { costOfSpots, darkOf, type SpotCost } from './darkness.ts';
import { daySlots, type Ground } from './ground.ts';
import type { Slices } from './slices.ts';
import { type Spot, Timeline } from './timeline.ts';

/** Jobs in the order in which they are given places, and what is kept to besides. */
export interface Recipe {
  readonly list: readonly number[];
  /** stretches are done within a day where that leaves less dark */
  readonly isGrouped: boolean;
  /** new ways come before old ones go, where they can */
  readonly isEased: boolean;
}

/** Days tried for a stretch of jobs that leave something dark. */
const triedDays = 6;

/** Gives each job of a list the earliest place that is left, one after another, and each stretch the day that leaves it least dark. */
export class Decoder {
  readonly ground: Ground;
  readonly slices: Slices;
  readonly timeline: Timeline;
  private readonly watchers: readonly (readonly number[])[];
  private readonly end: number;
  /** places given so far */
  work = 0;

  constructor(ground: Ground, slices: Slices) {
    this.ground = ground;
    this.slices = slices;
    this.timeline = new Timeline(ground);
    this.end = ground.days * daySlots;
    this.watchers = slices.groups.map((group) =>
      group.length < 2
        ? []
        : ground.functions.flatMap(({ ways }, n) =>
            ways.some(({ from, until }) => [...from, ...until].some((job) => group.includes(job))) ? [n] : [],
          ),
    );
  }

  /** The cost of a recipe, its spots left in the timeline; absent where a job finds no place. */
  decode(recipe: Recipe): SpotCost | undefined {
    this.timeline.clear();
    for (const job of recipe.list) {
      if (this.timeline.spots[job] === undefined && !this.place(job, recipe)) return undefined;
    }
    return costOfSpots(this.ground, this.timeline.spots);
  }

  private place(job: number, recipe: Recipe): boolean {
    const { groupOf, groups, before } = this.slices;
    const group = groupOf[job] ?? job;
    const members = recipe.isGrouped ? (groups[group] ?? [job]) : [job];
    for (const member of members) {
      for (const { job: needed } of this.ground.jobs[member]?.preds ?? [])
        if (!this.isThere(needed, members) && !this.place(needed, recipe)) return false;
      if (recipe.isEased)
        for (const eased of before[member] ?? [])
          if (!this.isThere(eased, members) && !this.place(eased, recipe)) return false;
    }
    if (members.length < 2) return this.putEarliest(job, 0);
    return this.placeGroup(group, members, recipe);
  }

  private isThere(job: number, members: readonly number[]): boolean {
    return this.timeline.spots[job] !== undefined || (members.length > 1 && members.includes(job));
  }

  private putEarliest(job: number, floor: number): boolean {
    this.work += 1;
    const spot = this.timeline.find(job, Math.max(floor, this.timeline.ready(job)));
    if (spot === undefined) return false;
    this.timeline.put(job, spot);
    return true;
  }

  private placeGroup(group: number, members: readonly number[], recipe: Recipe): boolean {
    const order = this.inner(members, recipe);
    let best: { dark: number; last: number; spots: readonly (Spot | undefined)[] } | undefined;
    let floor = 0;
    for (let tried = 0; tried < triedDays; tried += 1) {
      const isPlaced = order.every((member) => this.putEarliest(member, floor));
      const spots = order.map((member) => this.timeline.spots[member]);
      if (isPlaced) {
        const dark = this.darkOf(group);
        const last = Math.max(...spots.map((spot) => spot?.end ?? 0));
        if (best === undefined || dark < best.dark || (dark === best.dark && last < best.last))
          best = { dark, last, spots };
        const day = Math.floor((last - 1) / daySlots);
        const begun = Math.min(...spots.map((spot) => spot?.begin ?? 0));
        floor = Math.max(day, Math.floor(begun / daySlots) + 1) * daySlots;
      }
      for (const member of order) this.timeline.lift(member);
      if (!isPlaced || best?.dark === 0) break;
    }
    if (best === undefined) return false;
    for (const [n, member] of order.entries()) {
      const spot = best.spots[n];
      if (spot !== undefined) this.timeline.put(member, spot);
    }
    return true;
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
