import type { Problem } from '../problem.ts';
import { bestOnTrunk } from './best-on-trunk.ts';
import { fedFrom } from './fed-from.ts';
import type { FoundPlan } from './found-plan.ts';
import type { Ground, LeadOption } from './ground.ts';
import { baseCost, GroundQueue, type NextTrunk } from './ground-queue.ts';
import { Heap } from './heap.ts';
import { quickSearch } from './quick-search.ts';
import type { Purse } from './search-trunks.ts';
import { sweepTrunks, type TrunkGraph } from './sweep.ts';
import { servedGroups } from './sweep-field.ts';

/** What a search has to say so far: the best layout, and a cost that none on these grounds is under. */
export interface SearchState {
  readonly found: FoundPlan | undefined;
  readonly bound: number;
}

/** How much work goes by at most between two reports while the bound rises. */
const reportEvery = 20_000;

/** A search that is not through after this much work gets a good layout from the quick search, at the most for its work. */
const easyWork = 1500;
const quickWork = 4000;

/**
 * Lists the trunks of all grounds in the order of their floors and finds the cheapest layout on each, until no trunk to come
 * can be cheaper: then the best found costs the bound, or no layout keeps the limits of these grounds and the bound is
 * infinite. Yields every better layout, and the state now and then; the last state comes last. Work is counted in states
 * of the sweep, starts of trunks, and tees hung.
 */
export function* exactSearch({
  problem,
  grounds,
  purse,
}: {
  readonly problem: Problem;
  readonly grounds: readonly Ground[];
  readonly purse: Purse;
}): Generator<SearchState> {
  const search = new Search({ problem, grounds, purse });
  const easyLeft = purse.left - easyWork;
  let reportAt = purse.left - reportEvery;
  let isEasy = true;
  while (search.goesOn()) {
    const isBetter = search.step();
    if (isBetter || purse.left < reportAt) yield search.state();
    if (purse.left < reportAt) reportAt = purse.left - reportEvery;
    if (!isEasy || (purse.left > easyLeft && search.goesOn())) continue;
    isEasy = false;
    if (!search.isThrough()) yield* search.help(grounds);
  }
  yield search.state();
}

/** How much work a trunk may take before it has to wait. */
const firstPerTrunk = 1000;

class Search {
  readonly #queues: readonly GroundQueue[];
  readonly #purse: Purse;
  /** a cost that no layout on a ground which is not known is under */
  readonly #unknown: number;
  /** trunks that took too much work, to be worked on when the others are through */
  readonly #hard = new Heap<NextTrunk & { ground: Ground }>((one, other) => one.floor - other.floor);
  #mostPerTrunk = firstPerTrunk;
  #found: FoundPlan | undefined;
  #turn = 0;

  constructor({
    problem,
    grounds,
    purse,
  }: {
    readonly problem: Problem;
    readonly grounds: readonly Ground[];
    readonly purse: Purse;
  }) {
    const { queues, unknown } = groundQueues({ problem, grounds, purse });
    this.#queues = queues;
    this.#unknown = unknown;
    this.#purse = purse;
  }

  get #under(): number {
    return this.#found?.plan.value.cost ?? Number.POSITIVE_INFINITY;
  }

  get #lowest(): number {
    return Math.min(...this.#queues.map(({ floor }) => floor));
  }

  /** No layout costs less, unless it is found. */
  get #bound(): number {
    return Math.min(this.#lowest, this.#hard.first?.floor ?? Number.POSITIVE_INFINITY, this.#unknown);
  }

  state(): SearchState {
    return { found: this.#found, bound: Math.min(this.#bound, this.#under) };
  }

  goesOn(): boolean {
    const hard = this.#hard.first?.floor ?? Number.POSITIVE_INFINITY;
    return this.#purse.left > 0 && Math.min(this.#lowest, hard) < this.#under;
  }

  /** Whether nothing is left to find. */
  isThrough(): boolean {
    return this.#bound >= this.#under;
  }

  /** Works on one trunk; true when it gave a better layout. */
  step(): boolean {
    if (this.#lowest >= this.#under) return this.#stepHard();
    const queue = this.#nextQueue();
    const next = queue?.next(this.#purse);
    return queue !== undefined && next !== undefined && this.#layOn({ ground: queue.ground, ...next });
  }

  /** Works once more on every trunk that took too much, with more work for each. */
  #stepHard(): boolean {
    this.#mostPerTrunk *= 8;
    const again: (NextTrunk & { ground: Ground })[] = [];
    for (let next = this.#hard.pop(); next !== undefined; next = this.#hard.pop()) again.push(next);
    let isBetter = false;
    for (const next of again) {
      if (this.#purse.left <= 0) this.#hard.push(next);
      else if (next.floor < this.#under) isBetter = this.#layOn(next) || isBetter;
    }
    return isBetter;
  }

  #layOn(next: NextTrunk & { ground: Ground }): boolean {
    const own: Purse = { left: Math.min(this.#mostPerTrunk, this.#purse.left) };
    const given = own.left;
    const answer = bestOnTrunk({ ...next, under: this.#under, purse: own });
    this.#purse.left -= given - own.left;
    if (!answer.complete) this.#hard.push(next);
    if (answer.plan === undefined) return false;
    this.#found = { ground: next.ground, plan: answer.plan };
    return true;
  }

  /** Lets the quick search look for a better layout, so that fewer trunks need be looked at. */
  *help(grounds: readonly Ground[]): Generator<SearchState> {
    const quick: Purse = { left: Math.min(quickWork, Math.ceil(this.#purse.left / 3)) };
    const given = quick.left;
    for (const found of quickSearch(grounds, quick)) {
      const { violation, cost } = found.plan.value;
      if (violation > 0 || cost >= this.#under) continue;
      this.#found = found;
      yield this.state();
    }
    this.#purse.left -= given - quick.left;
  }

  /** Until there is a layout every ground has its turn, else one that cannot carry the bus would take all the work. */
  #nextQueue(): GroundQueue | undefined {
    const open = this.#queues.filter(({ floor }) => floor < Number.POSITIVE_INFINITY);
    this.#turn += 1;
    if (this.#found === undefined) return open[this.#turn % open.length];
    const lowest = this.#lowest;
    return open.find(({ floor }) => floor === lowest);
  }
}

/** A queue for each ground; where the sweep of one grew too wide, `unknown` is a cost that none of its trunks is under. */
const groundQueues = ({
  problem,
  grounds,
  purse,
}: {
  readonly problem: Problem;
  readonly grounds: readonly Ground[];
  readonly purse: Purse;
}): { readonly queues: readonly GroundQueue[]; readonly unknown: number } => {
  const queues: GroundQueue[] = [];
  const graphs = new Map<string, TrunkGraph | undefined>();
  let unknown = Number.POSITIVE_INFINITY;
  for (const ground of problem.devices.length > problem.limits.devices ? [] : grounds) {
    const leads = fedFrom(ground);
    const groups = servedGroups(ground, leads);
    if (groups === undefined) continue;
    const key = sweepKey(ground, leads);
    if (!graphs.has(key)) graphs.set(key, sweepTrunks({ ground, groups, purse }));
    const graph = graphs.get(key);
    if (graph === undefined) unknown = Math.min(unknown, baseCost(ground));
    queues.push(new GroundQueue({ ground, graph, leads }));
  }
  return { queues, unknown };
};

/** Grounds of one problem differ, as far as a sweep sees them, only in the places they may be fed from and in blind ends. */
const sweepKey = ({ ways }: Ground, leads: readonly LeadOption[]): string =>
  [ways.length, ...leads.map(({ place }) => place)].join();
