import { CostBelow } from './cost-below.ts';
import { SettledItems } from './settled-items.ts';

/** What may be chosen: an item with its cost, and the things it hangs on, each of which is paid for once. Costs are whole numbers. */
export interface ChoiceItem {
  readonly cost: number;
  /** places in `bases` */
  readonly on: readonly number[];
}

/**
 * Choose items at least cost. Of every `wanted` list at least one item is chosen, of every `limit` at most `most`, of every
 * `never` list not all. Items by their place in `items`.
 */
export interface Choice {
  readonly items: readonly ChoiceItem[];
  /** costs of what items hang on */
  readonly bases: readonly number[];
  readonly wanted: readonly (readonly number[])[];
  readonly limits: readonly { readonly of: readonly number[]; readonly most: number }[];
  readonly never: readonly (readonly number[])[];
}

/** The cheapest choice found, and a cost below which there is none; proven where the two are equal. */
export interface Chosen {
  readonly chosen: readonly number[];
  readonly cost: number;
  readonly bound: number;
  /** branches looked at */
  readonly work: number;
}

/** How much may be spent on a choice: branches, and steps of the bound at the first of them and at every other. */
export interface Effort {
  readonly branches: number;
  readonly firstSteps: number;
  readonly steps: number;
}

/** How many times the branches may be spent while no choice at all is found. */
const withoutAny = 10;

/** Lists without those that another list is part of: whatever meets that meets them. */
const leastLists = (lists: Choice['wanted']): Choice['wanted'] => {
  const kept: ReadonlySet<number>[] = [];
  for (const list of [...lists].sort((a, b) => a.length - b.length)) {
    const items = new Set(list);
    if (!kept.some((other) => other.size <= items.size && [...other].every((item) => items.has(item))))
      kept.push(items);
  }
  return kept.map((items) => [...items]);
};

class Search {
  readonly #choice: Choice;
  readonly #settled: SettledItems;
  readonly #below: CostBelow;
  #most = 0;
  #steps = 0;
  #otherSteps = 0;
  work = 0;
  best: { readonly chosen: readonly number[]; readonly cost: number } | undefined;
  /** the least that a branch left unlooked at could cost */
  left = Number.POSITIVE_INFINITY;

  constructor(choice: Choice) {
    this.#choice = choice;
    this.#settled = new SettledItems(choice);
    this.#below = new CostBelow(choice);
  }

  /** Looks at everything again, in so many branches more. */
  within({ branches, firstSteps, steps }: Effort): void {
    this.#most = this.work + branches;
    this.#steps = firstSteps;
    this.#otherSteps = steps;
    this.left = Number.POSITIVE_INFINITY;
    this.run();
  }

  /** Takes what must be taken, until nothing must; the wanted lists unmet then, or undefined where one cannot be met. */
  #forced(): number[] | undefined {
    const { marks } = this.#settled;
    for (;;) {
      const unmet: number[] = [];
      let single: number | undefined;
      for (let at = 0; at < this.#choice.wanted.length; at += 1) {
        const list = this.#choice.wanted[at] ?? [];
        if (list.some((item) => marks[item] === 'in')) continue;
        const open = list.filter((item) => marks[item] === 'open');
        if (open.length === 0) return undefined;
        if (open.length === 1) single = open[0];
        unmet.push(at);
      }
      if (single === undefined) return unmet;
      if (!this.#settled.take(single)) return undefined;
    }
  }

  run(): void {
    const height = this.#settled.height;
    this.work += 1;
    this.#look();
    this.#settled.backTo(height);
  }

  #look(): void {
    for (;;) {
      const unmet = this.#forced();
      if (unmet === undefined) return;
      if (unmet.length === 0) {
        this.#keep();
        return;
      }
      const dearest = this.best?.cost ?? Number.POSITIVE_INFINITY;
      const below = this.#below.under(this.#settled, unmet, { most: dearest, steps: this.#steps });
      this.#steps = this.#otherSteps;
      const exact = this.#settled.cost + below.cost;
      const least = Math.ceil(exact);
      if (least >= dearest) return;
      const most = this.best === undefined ? withoutAny * this.#most : this.#most;
      if (this.work >= most) {
        this.left = Math.min(this.left, least);
        return;
      }
      const fixed = this.#settleBy(below.prices, dearest - 1 - exact);
      if (fixed === 'none') this.#branch(unmet, below.prices);
      if (fixed !== 'some') return;
    }
  }

  #keep(): void {
    const { marks, cost } = this.#settled;
    if (this.best === undefined || cost < this.best.cost)
      this.best = { chosen: marks.flatMap((mark, item) => (mark === 'in' ? [item] : [])), cost };
  }

  /** Leaves out every item that would cost as much more as the best known; takes every one without which it would. */
  #settleBy(prices: Float64Array, spare: number): 'none' | 'some' | 'cannot' {
    if (spare === Number.POSITIVE_INFINITY) return 'none';
    const { marks } = this.#settled;
    let some = false;
    for (let item = 0; item < marks.length; item += 1) {
      if (marks[item] !== 'open') continue;
      const price = prices[item] ?? 0;
      if (Math.abs(price) <= spare || price === 0) continue;
      some = true;
      if (!(price > 0 ? this.#settled.leave(item) : this.#settled.take(item))) return 'cannot';
    }
    return some ? 'some' : 'none';
  }

  /**
   * One branch for each open item of the shortest unmet list, the one that the bound makes cheapest first; the items before
   * it are left out in the later branches.
   */
  #branch(unmet: readonly number[], prices: Float64Array): void {
    const settled = this.#settled;
    const lists = unmet.map((at) => (this.#choice.wanted[at] ?? []).filter((item) => settled.marks[item] === 'open'));
    const shortest = lists.reduce((a, b) => (b.length < a.length ? b : a));
    const order = [...shortest].sort((a, b) => (prices[a] ?? 0) - (prices[b] ?? 0) || a - b);
    for (const item of order) {
      const height = settled.height;
      if (settled.take(item)) this.run();
      settled.backTo(height);
      if (!settled.leave(item)) return;
    }
  }
}

/**
 * The cheapest choice, by branch and bound; undefined where there is none, or none is found in many times the branches.
 * When the effort is spent the best found so far is the answer. Pure; equal questions have equal answers.
 */
export const cheapestChoice = (choice: Choice, effort: Effort): Chosen | undefined => {
  const search = new Search({ ...choice, wanted: leastLists(choice.wanted) });
  // the first choice found, so that the bound knows what to aim at
  search.within({ ...effort, branches: 1 });
  search.within(effort);
  const { best, left, work } = search;
  return best === undefined ? undefined : { ...best, bound: Math.min(best.cost, left), work };
};
