import type { Layout, Problem } from '../problem.ts';
import { baseCost } from './base-cost.ts';
import { bestOnTrunk } from './best-on-trunk.ts';
import { FeedSieve } from './feed-sieve.ts';
import { byRank, firstOfEquals } from './first-of-equals.ts';
import type { FoundPlan } from './found-plan.ts';
import type { Ground, LeadOption } from './ground.ts';
import { GroundQueue, type NextTrunk } from './ground-queue.ts';
import { Heap } from './heap.ts';
import { noLegsKeepVolts } from './leg-search.ts';
import { quickSearch } from './quick-search.ts';
import type { Purse } from './search-trunks.ts';
import { sweepTrunks, type TrunkGraph } from './sweep.ts';
import { type ServedGroup, servedGroups } from './sweep-field.ts';
import { isTrunkOf, type Trunk, trunkOfWalk } from './trunk.ts';

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
  unlike,
  purse,
}: {
  readonly problem: Problem;
  readonly grounds: readonly Ground[];
  /** a layout whose trunk, of the same grade, is left out */
  readonly unlike?: Layout | undefined;
  readonly purse: Purse;
}): Generator<SearchState> {
  const search = new Search({ problem, grounds, unlike, purse });
  const easyLeft = purse.left - easyWork;
  let reportAt = purse.left - reportEvery;
  let isEasy = true;
  while (search.goesOn()) {
    const isBetter = search.step();
    if ((isBetter && search.goesOn()) || purse.left < reportAt) yield search.state();
    if (purse.left < reportAt) reportAt = purse.left - reportEvery;
    if (!isEasy || (purse.left > easyLeft && search.goesOn())) continue;
    isEasy = false;
    if (!search.isThrough()) yield* search.help(grounds);
  }
  // Where the graph of trunks grew too wide there may be nothing to list, yet much to find.
  if (isEasy && !search.isThrough()) yield* search.help(grounds);
  if (search.isThrough()) search.takeFirstOfEquals();
  yield search.state();
}

/** A trunk and the queue it came from. */
type QueuedTrunk = NextTrunk & { readonly queue: GroundQueue };

/** Work for choosing among layouts of the least cost. */
const equalsWork = 4000;

/** How much work a trunk may take before it has to wait. */
const firstPerTrunk = 1000;

class Search {
  #queues: readonly GroundQueue[];
  readonly #maker: QueueMaker;
  readonly #unlike: Layout | undefined;
  readonly #purse: Purse;
  /** trunks that took too much work, to be worked on when the others are through */
  readonly #hard = new Heap<QueuedTrunk>((one, other) => one.floor - other.floor);
  #mostPerTrunk = firstPerTrunk;
  #found: FoundPlan | undefined;
  /** the trunks on which a layout of the cost found stands */
  #equals: QueuedTrunk[] = [];
  #turn = 0;

  constructor({
    problem,
    grounds,
    unlike,
    purse,
  }: {
    readonly problem: Problem;
    readonly grounds: readonly Ground[];
    readonly unlike: Layout | undefined;
    readonly purse: Purse;
  }) {
    this.#unlike = unlike;
    const mayHold = problem.devices.length <= problem.limits.devices;
    this.#maker = new QueueMaker(purse);
    this.#queues = (mayHold ? grounds : []).flatMap((ground) => this.#maker.queueFor(ground, this.#under) ?? []);
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
    return Math.min(this.#lowest, this.#hard.first?.floor ?? Number.POSITIVE_INFINITY, this.#maker.unknown);
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
    if (queue === undefined || next === undefined || this.#isUnwanted(queue.ground, next.trunk)) return false;
    return this.#layOn({ queue, ...next });
  }

  #isUnwanted(ground: Ground, trunk: Trunk): boolean {
    return this.#unlike !== undefined && isTrunkOf({ ground, trunk, layout: this.#unlike });
  }

  /** Works once more on every trunk that took too much, with more work for each. */
  #stepHard(): boolean {
    this.#mostPerTrunk *= 8;
    const again: QueuedTrunk[] = [];
    for (let next = this.#hard.pop(); next !== undefined; next = this.#hard.pop()) again.push(next);
    let isBetter = false;
    for (const next of again) {
      if (this.#purse.left <= 0) this.#hard.push(next);
      else if (next.floor < this.#under) isBetter = this.#layOn(next) || isBetter;
    }
    return isBetter;
  }

  #layOn(next: QueuedTrunk): boolean {
    const own: Purse = { left: Math.min(this.#mostPerTrunk, this.#purse.left) };
    const given = own.left;
    const { ground, sieve } = next.queue;
    const answer = bestOnTrunk({ ...next, ground, sieve, under: this.#under + 1, purse: own });
    this.#purse.left -= given - own.left;
    if (!answer.complete) this.#hard.push(next);
    if (answer.plan === undefined) return false;
    const isBetter = answer.plan.value.cost < this.#under;
    if (isBetter) this.#found = { ground, plan: answer.plan };
    this.#equals = isBetter ? [next] : [...this.#equals, next];
    return isBetter;
  }

  /** Of all layouts of the least cost takes the first in rank, as far as a little work tells. */
  takeFirstOfEquals(): void {
    if (this.#found === undefined) return;
    const { cost } = this.#found.plan.value;
    const own: Purse = { left: Math.min(equalsWork, this.#purse.left) };
    const given = own.left;
    while (own.left > 0 && this.#lowest === cost) {
      const queue = this.#queues.find(({ floor }) => floor === cost);
      const next = queue?.next(own);
      if (queue !== undefined && next?.floor === cost && !this.#isUnwanted(queue.ground, next.trunk))
        this.#equals.push({ queue, ...next });
    }
    const ranked = this.#equals.flatMap(({ queue: { ground, sieve }, trunk }) => {
      const first = firstOfEquals({ ground, trunk, sieve, cost, purse: own });
      return first === undefined ? [] : [{ ground, ...first }];
    });
    this.#purse.left -= given - own.left;
    const [first] = ranked.sort(byRank);
    if (first !== undefined) this.#found = { ground: first.ground, plan: first.plan };
  }

  /** Lets the quick search look for a better layout, so that fewer trunks need be looked at. */
  *help(grounds: readonly Ground[]): Generator<SearchState> {
    const quick: Purse = { left: Math.min(quickWork, Math.ceil(this.#purse.left / 3)) };
    const given = quick.left;
    for (const found of quickSearch(grounds, quick)) {
      const { violation, cost } = found.plan.value;
      if (violation > 0 || cost >= this.#under) continue;
      if (this.#isUnwanted(found.ground, trunkOfWalk(found.ground, found.plan.walk))) continue;
      this.#found = found;
      this.#equals = [];
      yield this.state();
    }
    this.#purse.left -= given - quick.left;
    this.narrow();
  }

  /** Leaves out the feeds that are too dear beside the best layout found. */
  narrow(): void {
    // One more than the best found, so that its equals stay.
    this.#queues = this.#queues.flatMap((queue) => this.#maker.queueFor(queue.ground, this.#under + 1, queue) ?? []);
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

/** Queues for grounds of one problem; grounds that may be fed from the same places share the graph of their trunks. */
class QueueMaker {
  /** where the sweep of a ground grew too wide, a cost that none of its trunks is under */
  unknown = Number.POSITIVE_INFINITY;
  readonly #graphs = new Map<string, TrunkGraph | undefined>();
  readonly #purse: Purse;

  constructor(purse: Purse) {
    this.#purse = purse;
  }

  /** The queue of a ground for layouts under a cost; nothing where it has none. */
  queueFor(ground: Ground, under: number, had?: GroundQueue): GroundQueue | undefined {
    const everywhere = Uint8Array.from(ground.ways, ({ most }) => most);
    const leads = new FeedSieve(ground, ground.leads).feedsFor({ times: everywhere, trunkCost: 0, under });
    if (had !== undefined && had.floor < under && this.#isHopeless({ ground, leads, under })) return undefined;
    if (had !== undefined && leads.length === had.leads.length) return had;
    const groups = servedGroups(ground, leads);
    if (groups === undefined) return undefined;
    const key = sweepKey(ground, leads);
    if (!this.#graphs.has(key)) this.#graphs.set(key, this.#graphOf(ground, groups));
    const graph = this.#graphs.get(key);
    if (graph === undefined) this.unknown = Math.min(this.unknown, baseCost(ground));
    return new GroundQueue({ ground, graph, leads });
  }

  /** A search of legs may take a quarter of what is left. */
  #isHopeless(asked: { ground: Ground; leads: readonly LeadOption[]; under: number }): boolean {
    const own: Purse = { left: Math.ceil(this.#purse.left / 4) };
    const given = own.left;
    const isHopeless = noLegsKeepVolts({ ...asked, purse: own });
    this.#purse.left -= given - own.left;
    return isHopeless;
  }

  /** A sweep may take half of what is left, so that where it grows too wide something else can be tried. */
  #graphOf(ground: Ground, groups: readonly ServedGroup[]): TrunkGraph | undefined {
    const own: Purse = { left: Math.ceil(this.#purse.left / 2) };
    const given = own.left;
    const graph = sweepTrunks({ ground, groups, purse: own });
    this.#purse.left -= given - own.left;
    return graph;
  }
}

/** Grounds of one problem differ, as far as a sweep sees them, only in the places they may be fed from and in blind ends. */
const sweepKey = ({ ways }: Ground, leads: readonly LeadOption[]): string =>
  [ways.length, ...leads.map(({ place }) => place)].join();
