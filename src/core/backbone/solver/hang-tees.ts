import type { DropOption, Ground, GroundDevice, LeadOption, TeeChoice } from './ground.ts';
import { MomentBound, slack } from './moment-bound.ts';
import type { Purse } from './search-trunks.ts';
import { judgeTees, type MeasuredWalk, type TeePlan } from './tee-plan.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/** A drop longer than this, as bought, is a long one. */
const longDropMm = 3000;

/** Whether a drop is a long one. */
export const isLong = ({ boughtMm }: DropOption): boolean => boughtMm > longDropMm;

/** A tee a device may have for one place of the feed: how far along the trunk from the feed, and on which side of it. */
export interface Hook {
  readonly step: number;
  readonly option: DropOption;
  readonly x: number;
  readonly awayMm: number;
  /** 1 or -1 along the walk; 0 at the feed's own step, where the current comes from both legs */
  readonly side: number;
}

export interface Hanging {
  readonly device: GroundDevice;
  readonly number: number;
  readonly hooks: readonly Hook[];
}

/** Points hung so far, for the farthest pair: greatest x + d and d - x. */
interface Reach {
  readonly right: number;
  readonly left: number;
}

/** Which tees alone are looked for: `at` the place of each device that has to have one, and how many drops may be long at most. */
export interface Narrowing {
  readonly at: ReadonlyMap<number, number>;
  readonly mostLong: number;
}

const anyTees: Narrowing = { at: new Map(), mostLong: Number.POSITIVE_INFINITY };

/** Cheapest tees for one walk, every limit kept, by branch and bound over the devices for each place of the feed. */
export class TeeHanger {
  readonly #ground: Ground;
  readonly #leads: readonly LeadOption[];
  readonly #measured: MeasuredWalk;
  readonly #purse: Purse;
  readonly #enough: number;
  readonly #narrowing: Narrowing;
  readonly #trunkMm: number;
  readonly #lengthsMayBind: boolean;
  readonly #legsMayBind: boolean;
  readonly #allMa: number;
  readonly #fixedCost: number;
  #hangings: readonly Hanging[] = [];
  #costAfter: readonly number[] = [];
  #boughtAfter: readonly number[] = [];
  #pricedAfter: readonly number[] = [];
  #bound: MomentBound | undefined;
  readonly #chosen: (Hook | undefined)[];
  /** trunk shared with others times their current, millimetre milliampere, for each hanging */
  readonly #shared: number[];
  readonly #legMa = [0, 0, 0];
  #leadFine = 0;
  #under: number;
  #best: readonly (TeeChoice | undefined)[] | undefined;

  constructor({
    ground,
    leads,
    measured,
    under,
    purse,
    enough = 0,
    narrowing = anyTees,
  }: {
    readonly ground: Ground;
    /** places it may be fed from, cheapest first */
    readonly leads: readonly LeadOption[];
    readonly measured: MeasuredWalk;
    readonly under: number;
    readonly purse: Purse;
    /** a cost at which looking on is no use */
    readonly enough?: number;
    readonly narrowing?: Narrowing;
  }) {
    const { devices, spares, teeCost, limitMm } = ground;
    this.#ground = ground;
    this.#leads = leads;
    this.#measured = measured;
    this.#under = under;
    this.#purse = purse;
    this.#enough = enough;
    this.#narrowing = narrowing;
    this.#trunkMm = measured.atMm.at(-1) ?? 0;
    this.#lengthsMayBind = this.#trunkMm + 2 * ground.problem.limits.dropMm > limitMm;
    this.#allMa = devices.reduce((sum, { ma }) => sum + ma, 0);
    this.#legsMayBind = this.#allMa > ground.grade.maxMa;
    const tees = spares.reduce((sum, { count }) => sum + count, devices.length);
    this.#fixedCost = ground.fixedCost + ground.feedCost + measured.cost + tees * teeCost;
    this.#chosen = devices.map(() => undefined);
    this.#shared = devices.map(() => 0);
  }

  /** The cheapest plan under the cost given; nothing when none is, or the purse is empty before all is tried. */
  run(): TeePlan | undefined {
    for (const lead of this.#leads) {
      const cost = this.#fixedCost + lead.cost;
      if (cost >= this.#under || this.#isEnough()) break;
      for (const step of this.#measured.stepsAt.get(lead.place) ?? []) this.#fedAt({ lead, step, cost });
    }
    if (this.#best === undefined) return undefined;
    return judgeTees({ ground: this.#ground, measured: this.#measured, tees: this.#best });
  }

  #isEnough(): boolean {
    return this.#best !== undefined && this.#under <= this.#enough;
  }

  #fedAt({ lead, step, cost }: { readonly lead: LeadOption; readonly step: number; readonly cost: number }): void {
    this.#purse.left -= this.#ground.devices.length;
    this.#leadFine = 2 * this.#ground.problem.feed.leadMicroOhmPerM * lead.maxMm * this.#allMa;
    const hangings = this.#ground.devices.map(
      (device, number): Hanging => ({ device, number, hooks: this.#hooks(device, { number, feedStep: step }) }),
    );
    if (hangings.some(({ hooks }) => hooks.length === 0)) return;
    const bound = new MomentBound({ hangings, mostMoment: this.#mostMoment(), cost });
    if (!bound.raise(this.#under)) return;
    this.#hangings = hangings.sort(
      (one, other) => one.hooks.length - other.hooks.length || other.device.ma - one.device.ma,
    );
    const after = (least: (hanging: Hanging) => number): number[] => {
      const sums = [0];
      for (const hanging of this.#hangings.toReversed()) sums.unshift((sums[0] ?? 0) + least(hanging));
      return sums;
    };
    this.#costAfter = after(({ hooks }) => hooks[0]?.option.cost ?? 0);
    this.#boughtAfter = after(({ hooks }) => Math.min(...hooks.map(({ option }) => option.boughtMm)));
    this.#legMa.fill(0);
    this.#shared.fill(0);
    const reach = { right: this.#trunkMm, left: 0 };
    this.#bound = bound;
    this.#pricedAfter = after((hanging) => bound.least(hanging));
    if (this.#trunkMm <= this.#ground.limitMm)
      this.#hang({ at: 0, cost, boughtMm: 0, long: 0, reach, priced: bound.offset + cost });
  }

  /** Hooks of a device, cheapest first, without those that another one beats in every limit. */
  #hooks(
    { options, ma, minMv }: GroundDevice,
    { number, feedStep }: { readonly number: number; readonly feedStep: number },
  ): readonly Hook[] {
    const { atMm, stepsAt } = this.#measured;
    const { problem, grade } = this.#ground;
    const feedMm = atMm[feedStep] ?? 0;
    const capFine = (problem.feed.mv - minMv) * fineInMv - this.#leadFine;
    const only = this.#narrowing.at.get(number);
    const hooks: Hook[] = [];
    for (const option of options) {
      if (option.boughtMm > problem.limits.dropMm || option.place !== (only ?? option.place)) continue;
      for (const step of stepsAt.get(option.place) ?? []) {
        const x = atMm[step] ?? 0;
        const awayMm = Math.abs(x - feedMm);
        if (2 * grade.microOhmPerM * ma * (awayMm + option.boughtMm) > capFine) continue;
        hooks.push({ step, option, x, awayMm, side: Math.sign(step - feedStep) });
      }
    }
    hooks.sort(
      (one, other) => one.option.cost - other.option.cost || one.awayMm - other.awayMm || one.step - other.step,
    );
    return hooks.filter((hook, n) => !hooks.some((other, m) => m < n && this.#beats(other, hook)));
  }

  #beats(one: Hook, other: Hook): boolean {
    if (this.#lengthsMayBind && one.x !== other.x) return false;
    if (one.side !== other.side && (this.#legsMayBind || one.awayMm > 0)) return false;
    return one.awayMm <= other.awayMm && one.option.boughtMm <= other.option.boughtMm;
  }

  /** The most moment of one leg: its farthest device loses 2 R times it, besides what the lead loses. */
  #mostMoment(): number {
    const { problem, grade, devices } = this.#ground;
    const leastMv = Math.min(...devices.map(({ minMv }) => minMv));
    const fine = (problem.feed.mv - leastMv) * fineInMv - this.#leadFine;
    return fine / (2 * grade.microOhmPerM);
  }

  #hang({
    at,
    cost,
    boughtMm,
    long,
    reach,
    priced,
  }: {
    readonly at: number;
    readonly cost: number;
    readonly boughtMm: number;
    readonly long: number;
    readonly reach: Reach;
    /** cost with the moments so far at their prices */
    readonly priced: number;
  }): void {
    const hanging = this.#hangings[at];
    if (hanging === undefined) {
      this.#under = cost;
      this.#best = this.#teesChosen();
      return;
    }
    for (const hook of hanging.hooks) {
      if (cost + hook.option.cost + (this.#costAfter[at + 1] ?? 0) >= this.#under) return;
      if (this.#purse.left <= 0 || this.#isEnough()) return;
      this.#purse.left -= 1;
      const allMm = boughtMm + hook.option.boughtMm;
      if (allMm + (this.#boughtAfter[at + 1] ?? 0) > this.#ground.problem.limits.dropsMm) continue;
      const pricedNext = priced + (this.#bound?.price(hook, hanging.device.ma) ?? 0);
      if (pricedNext + (this.#pricedAfter[at + 1] ?? 0) > this.#under - slack) continue;
      const next = this.#reachWith(reach, hook);
      const longNext = long + (isLong(hook.option) ? 1 : 0);
      if (next === undefined || longNext > this.#narrowing.mostLong) continue;
      this.#chosen[at] = hook;
      this.#load({ at, hook, sign: 1 });
      if (this.#holdsUpTo(at)) {
        this.#hang({
          at: at + 1,
          cost: cost + hook.option.cost,
          boughtMm: allMm,
          long: longNext,
          reach: next,
          priced: pricedNext,
        });
      }
      this.#load({ at, hook, sign: -1 });
    }
  }

  #reachWith({ right, left }: Reach, { x, option: { boughtMm } }: Hook): Reach | undefined {
    const farthest = Math.max(right + boughtMm - x, left + boughtMm + x);
    if (farthest > this.#ground.limitMm) return undefined;
    return { right: Math.max(right, x + boughtMm), left: Math.max(left, boughtMm - x) };
  }

  /** Puts a load on the trunk, or takes it off again (sign -1). */
  #load({ at, hook, sign }: { readonly at: number; readonly hook: Hook; readonly sign: number }): void {
    const ma = this.#hangings[at]?.device.ma ?? 0;
    let own = hook.awayMm * ma;
    for (let other = 0; other < at; other += 1) {
      const { side, awayMm } = this.#chosen[other] ?? hook;
      if (side !== hook.side) continue;
      const commonMm = Math.min(awayMm, hook.awayMm);
      own += commonMm * (this.#hangings[other]?.device.ma ?? 0);
      this.#shared[other] = (this.#shared[other] ?? 0) + sign * commonMm * ma;
    }
    this.#shared[at] = own;
    if (hook.side >= 0) this.#legMa[2] = (this.#legMa[2] ?? 0) + sign * ma;
    if (hook.side <= 0) this.#legMa[0] = (this.#legMa[0] ?? 0) + sign * ma;
  }

  #holdsUpTo(last: number): boolean {
    const { grade, problem } = this.#ground;
    if (Math.max(this.#legMa[0] ?? 0, this.#legMa[2] ?? 0) > grade.maxMa) return false;
    for (let at = 0; at <= last; at += 1) {
      const device = this.#hangings[at]?.device;
      const hook = this.#chosen[at];
      if (device === undefined || hook === undefined) continue;
      const fine = 2 * grade.microOhmPerM * ((this.#shared[at] ?? 0) + hook.option.boughtMm * device.ma);
      if (fine + this.#leadFine > (problem.feed.mv - device.minMv) * fineInMv) return false;
    }
    return true;
  }

  #teesChosen(): readonly (TeeChoice | undefined)[] {
    const tees = new Array<TeeChoice | undefined>(this.#hangings.length).fill(undefined);
    for (const [at, { number }] of this.#hangings.entries()) {
      const hook = this.#chosen[at];
      if (hook !== undefined) tees[number] = { step: hook.step, option: hook.option };
    }
    return tees;
  }
}
