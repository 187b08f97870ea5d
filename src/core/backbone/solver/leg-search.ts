import { baseCost } from './base-cost.ts';
import { type DropTable, dropTable } from './drop-table.ts';
import type { Ground, LeadOption } from './ground.ts';
import { LeastMoment } from './least-moment.ts';
import type { Purse } from './search-trunks.ts';

/** Where the least moment is a smaller share of what is allowed before a step is taken, the volts will hardly be in the way. */
const promising = 0.5;

/** One leg of the trunk as far as it is led: from the feed to a place, so long. An ended leg goes no farther. */
interface Leg {
  readonly place: number;
  readonly mm: number;
  readonly isEnded: boolean;
}

/**
 * Leads both legs of the trunk away from a feed, way by way, in every manner. As they go, the places they have left behind
 * are ever longer to come to, until the moment of current is more than the volts allow: when that is so for every pair of
 * legs, nothing can be fed from there.
 */
class LegSearch {
  readonly #ground: Ground;
  readonly #start: Leg;
  readonly #moment: LeastMoment;
  readonly #awayFrom: readonly Float64Array[];
  readonly #purse: Purse;
  /** what may be spent on trunk in a layout cheap enough */
  readonly #mostTrunk: number;
  /** least length of trunk from the feed to each place that a leg has come to; infinite elsewhere */
  readonly #walkedMm: Float64Array;
  readonly #awayMm: Float64Array;
  readonly #times: Uint8Array;

  constructor({
    ground,
    drops,
    awayFrom,
    lead,
    under,
    purse,
  }: {
    readonly ground: Ground;
    readonly drops: DropTable;
    readonly awayFrom: readonly Float64Array[];
    readonly lead: LeadOption;
    readonly under: number;
    readonly purse: Purse;
  }) {
    this.#ground = ground;
    this.#start = { place: lead.place, mm: 0, isEnded: false };
    this.#moment = new LeastMoment({ ground, drops, lead, purse });
    this.#awayFrom = awayFrom;
    this.#purse = purse;
    this.#mostTrunk = under - baseCost(ground) - lead.cost - leastDrops(ground, drops);
    this.#walkedMm = new Float64Array(ground.waysAt.length).fill(Number.POSITIVE_INFINITY);
    this.#walkedMm[lead.place] = 0;
    this.#awayMm = new Float64Array(ground.waysAt.length);
    this.#times = new Uint8Array(ground.ways.length);
  }

  /** The least moment before a step is taken, in shares of what is allowed. */
  get firstShare(): number {
    return this.#share(this.#start, this.#start);
  }

  /** Whether it is shown that no layout under the cost can be fed from here. */
  isHopeless(): boolean {
    return this.#rulesOut(this.#start, this.#start, 0);
  }

  #share(one: Leg, other: Leg): number {
    const [fromOne, fromOther] = [this.#awayFrom[one.place], this.#awayFrom[other.place]];
    for (let place = 0; place < this.#awayMm.length; place += 1) {
      let mm = this.#walkedMm[place] ?? 0;
      if (!one.isEnded) mm = Math.min(mm, one.mm + (fromOne?.[place] ?? 0));
      if (!other.isEnded) mm = Math.min(mm, other.mm + (fromOther?.[place] ?? 0));
      this.#awayMm[place] = mm;
    }
    return this.#moment.share(this.#awayMm);
  }

  /** Leads the shorter open leg on by every way, and ends it; whether none of it keeps the limits. */
  #rulesOut(one: Leg, other: Leg, trunkCost: number): boolean {
    if (trunkCost >= this.#mostTrunk || one.mm + other.mm > this.#ground.limitMm) return true;
    if (this.#share(one, other) > 1) return true;
    if (one.isEnded && other.isEnded) return false;
    if (one.isEnded || (!other.isEnded && other.mm < one.mm)) return this.#rulesOutOn(other, one, trunkCost);
    return this.#rulesOutOn(one, other, trunkCost);
  }

  #rulesOutOn(leg: Leg, other: Leg, trunkCost: number): boolean {
    if (this.#purse.left <= 0) return false;
    for (const number of this.#ground.waysAt[leg.place] ?? []) {
      const way = this.#ground.ways[number];
      const times = this.#times[number] ?? 0;
      if (way === undefined || times >= way.most) continue;
      const next: Leg = { place: way.a === leg.place ? way.b : way.a, mm: leg.mm + way.maxMm, isEnded: false };
      const before = this.#walkedMm[next.place] ?? 0;
      this.#times[number] = times + 1;
      this.#walkedMm[next.place] = Math.min(before, next.mm);
      const isOut = this.#rulesOut(next, other, trunkCost + way.cost);
      this.#times[number] = times;
      this.#walkedMm[next.place] = before;
      if (!isOut) return false;
    }
    if (this.#ground.problem.places[leg.place]?.end !== true) return true;
    return this.#rulesOut({ ...leg, isEnded: true }, other, trunkCost);
  }
}

const leastDrops = ({ devices }: Ground, { start, cost }: DropTable): number =>
  devices.reduce((sum, _, device) => sum + Math.min(...cost.subarray(start[device], start[device + 1])), 0);

/** Least longest length of trunk from a place to every other; infinite where none leads there. */
const awayFrom = ({ ways, waysAt }: Ground, from: number): Float64Array => {
  const away = new Float64Array(waysAt.length).fill(Number.POSITIVE_INFINITY);
  away[from] = 0;
  const waiting = [from];
  for (const here of waiting) {
    for (const number of waysAt[here] ?? []) {
      const way = ways[number];
      if (way === undefined) continue;
      const there = way.a === here ? way.b : way.a;
      const mm = (away[here] ?? 0) + way.maxMm;
      if (mm >= (away[there] ?? 0)) continue;
      away[there] = mm;
      waiting.push(there);
    }
  }
  return away;
};

/** Whether it is shown, with a little work, that no layout of a ground under a cost keeps the volts. */
export const noLegsKeepVolts = ({
  ground,
  leads,
  under,
  purse,
}: {
  readonly ground: Ground;
  readonly leads: readonly LeadOption[];
  readonly under: number;
  readonly purse: Purse;
}): boolean => {
  const drops = dropTable(ground);
  const away = ground.waysAt.map((_, place) => awayFrom(ground, place));
  const searches = leads.map((lead) => new LegSearch({ ground, drops, awayFrom: away, lead, under, purse }));
  const asked = searches.map((search) => ({ search, share: search.firstShare }));
  if (asked.some(({ share }) => share < promising)) return false;
  // The least hopeless first: where it stays, there is no need to ask the others.
  return asked.sort((one, other) => one.share - other.share).every(({ search }) => search.isHopeless());
};
