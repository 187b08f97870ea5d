import type { Choice } from './cheapest-choice.ts';
import type { SettledItems } from './settled-items.ts';

/** A cost that what is still wanted takes at least, and what each item adds to it or takes off it; in parts of one. */
export interface Below {
  readonly cost: number;
  readonly prices: Float64Array;
}

/** Multipliers are reckoned in this many parts of a whole cost, so that rounding them takes little off the bound. A power of two: every figure stays exact. */
const parts = 64;

interface Ask {
  /** a cost beyond which nobody looks */
  readonly most: number;
  readonly steps: number;
}

const placesOf = (count: number, lists: readonly (readonly number[])[]): number[][] => {
  const places: number[][] = Array.from({ length: count }, () => []);
  lists.forEach((list, at) => {
    for (const item of list) places[item]?.push(at);
  });
  return places;
};

/**
 * A bound by Lagrange multipliers. Each wanted list and each limit has a multiplier, a whole number not below nought, which
 * pays for meeting the list or is charged for standing against the limit; then every item can be judged alone by its price,
 * with the first thing it hangs on judged by the items on it together:
 *
 *   least = sum(list multipliers) - sum(limit multipliers x room) + sum over items of min(0, price)
 *   price = cost - sum(multipliers of its lists) + sum(multipliers of its limits)
 *
 * Whatever the multipliers, no choice costs less (weak duality), and all is in whole numbers, so nothing is lost to rounding.
 * Good multipliers are found by subgradient steps, as Held and Karp did in 1971 (from memory), and kept for the next branch.
 */
export class CostBelow {
  readonly #choice: Choice;
  readonly #costs: readonly number[];
  readonly #baseCosts: readonly number[];
  readonly #ofLists: Float64Array;
  readonly #ofLimits: Float64Array;
  readonly #listsAt: number[][];
  readonly #limitsAt: number[][];
  readonly #itemsOn: number[][];
  /** items of some wanted list: nobody takes another */
  readonly #wanted: readonly number[];

  constructor(choice: Choice) {
    const count = choice.items.length;
    this.#choice = choice;
    this.#costs = choice.items.map(({ cost }) => cost * parts);
    this.#baseCosts = choice.bases.map((cost) => cost * parts);
    this.#ofLists = new Float64Array(choice.wanted.length);
    this.#ofLimits = new Float64Array(choice.limits.length);
    this.#listsAt = placesOf(count, choice.wanted);
    this.#limitsAt = placesOf(
      count,
      choice.limits.map(({ of }) => of),
    );
    this.#wanted = this.#listsAt.flatMap((lists, item) => (lists.length > 0 ? [item] : []));
    this.#itemsOn = choice.bases.map((_, base) => this.#wanted.filter((item) => choice.items[item]?.on[0] === base));
    for (const [at, list] of choice.wanted.entries()) {
      const cheapest = Math.min(...list.map((item) => this.#costs[item] ?? 0));
      const shared = Math.max(...list.map((item) => this.#listsAt[item]?.length ?? 1));
      this.#ofLists[at] = Math.floor(cheapest / Math.max(1, shared));
    }
  }

  /** The best bound of some steps, for the lists unmet and the items open. */
  under(settled: SettledItems, unmet: readonly number[], { most, steps }: Ask): Below {
    const isUnmet = new Uint8Array(this.#ofLists.length);
    for (const at of unmet) isUnmet[at] = 1;
    const room = this.#choice.limits.map(
      ({ of, most: all }) => all - of.filter((i) => settled.marks[i] === 'in').length,
    );
    const spare = (most - settled.cost) * parts;
    let best: Below | undefined;
    let bestLists = Float64Array.from(this.#ofLists);
    let bestLimits = Float64Array.from(this.#ofLimits);
    let pace = 2;
    let since = 0;
    for (let step = 0; step < steps; step += 1) {
      const { below, taken } = this.#at(settled, { unmet, isUnmet, room });
      if (best === undefined || below.cost > best.cost) {
        best = below;
        bestLists = Float64Array.from(this.#ofLists);
        bestLimits = Float64Array.from(this.#ofLimits);
        since = 0;
      } else since += 1;
      if (best.cost > spare - parts) break;
      if (since >= 20) {
        pace /= 2;
        since = 0;
        this.#ofLists.set(bestLists);
        this.#ofLimits.set(bestLimits);
      }
      const aim = Math.min(spare, best.cost + Math.abs(best.cost) * 0.05 + 100 * parts);
      if (!this.#move({ unmet, room, taken, gap: pace * (aim - below.cost) })) break;
    }
    this.#ofLists.set(bestLists);
    this.#ofLimits.set(bestLimits);
    const { cost, prices } = best ?? { cost: 0, prices: new Float64Array(this.#choice.items.length) };
    return { cost: cost / parts, prices: prices.map((price) => price / parts) };
  }

  /** The bound with the multipliers as they are, and the items it would take. */
  #at(
    settled: SettledItems,
    {
      unmet,
      isUnmet,
      room,
    }: { readonly unmet: readonly number[]; readonly isUnmet: Uint8Array; readonly room: readonly number[] },
  ): { readonly below: Below; readonly taken: Uint8Array } {
    const { items } = this.#choice;
    const prices = new Float64Array(items.length);
    const taken = new Uint8Array(items.length);
    let cost = 0;
    for (const at of unmet) cost += this.#ofLists[at] ?? 0;
    for (let at = 0; at < room.length; at += 1) cost -= (this.#ofLimits[at] ?? 0) * (room[at] ?? 0);
    for (const item of this.#wanted) {
      if (settled.marks[item] !== 'open') continue;
      const one = items[item];
      let price = this.#costs[item] ?? 0;
      for (const at of this.#listsAt[item] ?? []) if (isUnmet[at] === 1) price -= this.#ofLists[at] ?? 0;
      for (const at of this.#limitsAt[item] ?? []) price += this.#ofLimits[at] ?? 0;
      prices[item] = price;
      const base = one?.on[0];
      if (base !== undefined && !settled.isPaid(base)) continue;
      if (price >= 0) continue;
      cost += price;
      taken[item] = 1;
    }
    return { below: { cost: cost + this.#onUnpaid(settled, prices, taken), prices }, taken };
  }

  /** What items add that hang on something not paid for yet: as much as they take off together, less what it costs. */
  #onUnpaid(settled: SettledItems, prices: Float64Array, taken: Uint8Array): number {
    let sum = 0;
    this.#itemsOn.forEach((on, base) => {
      if (on.length === 0 || settled.isPaid(base)) return;
      const open = on.filter((item) => settled.marks[item] === 'open');
      const gain = open.filter((item) => (prices[item] ?? 0) < 0);
      const together = gain.reduce((all, item) => all + (prices[item] ?? 0), this.#baseCosts[base] ?? 0);
      if (together < 0) {
        sum += together;
        for (const item of gain) taken[item] = 1;
      }
      // to take an item alone costs at least this more than what is reckoned; to leave it out says nothing
      for (const item of open) {
        const own = prices[item] ?? 0;
        prices[item] = Math.max(0, own) + Math.max(0, together);
      }
    });
    return sum;
  }

  /** One step along the subgradient; false where nothing would move. */
  #move({ unmet, room, taken, gap }: Move): boolean {
    const { wanted, limits } = this.#choice;
    const ofLists = unmet.map((at) => 1 - countIn(wanted[at] ?? [], taken));
    const ofLimits = limits.map(({ of }, at) => {
      const over = countIn(of, taken) - (room[at] ?? 0);
      return over < 0 && this.#ofLimits[at] === 0 ? 0 : over;
    });
    let norm = 0;
    for (const one of ofLists) norm += one * one;
    for (const one of ofLimits) norm += one * one;
    if (norm === 0) return false;
    const step = gap / norm;
    let moved = false;
    for (const [at, list] of unmet.entries()) moved = shift(this.#ofLists, list, step * (ofLists[at] ?? 0)) || moved;
    for (const [at, by] of ofLimits.entries()) moved = shift(this.#ofLimits, at, step * by) || moved;
    return moved;
  }
}

interface Move {
  readonly unmet: readonly number[];
  readonly room: readonly number[];
  readonly taken: Uint8Array;
  readonly gap: number;
}

const countIn = (list: readonly number[], taken: Uint8Array): number => {
  let count = 0;
  for (const item of list) count += taken[item] ?? 0;
  return count;
};

/** Moves one multiplier to the next whole number, not below nought; tells whether it moved. */
const shift = (multipliers: Float64Array, at: number, by: number): boolean => {
  if (by === 0) return false;
  const before = multipliers[at] ?? 0;
  const after = Math.max(0, Math.round(before + by));
  multipliers[at] = after;
  return after !== before;
};
