import type { WorkAnswer, WorkBudget, WorkCost, WorkProblem } from './problem.ts';
import { compareCosts, type SpotCost } from './solver/darkness.ts';
import { exactSearch } from './solver/exact-search.ts';
import { daySlots, type Ground, workGround } from './solver/ground.ts';
import { earliestEnds, type Heads, headsOf } from './solver/heads.ts';
import { type FoundOrder, improvedOrders } from './solver/improve.ts';
import { leastAscents } from './solver/least-ascents.ts';
import { leastDark } from './solver/least-dark.ts';
import { leastLastDay } from './solver/least-days.ts';
import { orderOf, reachOf } from './solver/reach.ts';
import { settle } from './solver/settle.ts';

/** The share of the work for changes of an order, before everything is tried: small where that has a chance to come to its end. */
const changeShare = (jobs: number): number => (jobs <= 14 ? 0.2 : jobs <= 40 ? 0.5 : 0.85);

interface Bounds {
  readonly dark: readonly number[];
  readonly lastDay: number;
  readonly ascents: number;
  /** some job can never be done, whatever the others do */
  readonly isNone: boolean;
}

/** What a search stands on; absent where jobs wait for each other in a circle. */
const groundWork = (
  problem: WorkProblem,
): { ground: Ground; heads: Heads; order: readonly number[]; bounds: Bounds } | undefined => {
  const ground = workGround(problem);
  const succs = ground.jobs.map(({ succs: own }) => own.map(({ job }) => job));
  const [order, reach] = [orderOf(succs), reachOf(succs)];
  if (order === undefined || reach === undefined) return undefined;
  const heads = headsOf(ground);
  const ends = earliestEnds(ground, heads, order);
  const bounds = {
    isNone: ends.some((end) => end > ground.days * daySlots),
    dark: leastDark({ ground, heads, order, reach }),
    lastDay: leastLastDay(ground, heads, order),
    ascents: leastAscents(ground),
  };
  return { ground, heads, order, bounds };
};

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/**
 * Orders for a problem, each better than the one before or with a higher bound: `proven` when cost and bound are equal, else
 * `gap`. Equal problem and budget give equal orders. Nothing is yielded where no order was found that keeps everything.
 */
export function* solveWork(problem: WorkProblem, budget: WorkBudget): Generator<WorkAnswer> {
  const base = groundWork(problem);
  if (base === undefined) return;
  const { ground, heads, order, bounds } = base;
  if (bounds.isNone) return;
  const floor: WorkCost = { dark: sum(bounds.dark), lastDay: bounds.lastDay, ascents: bounds.ascents };
  const isEnough = (cost: SpotCost): boolean =>
    cost.hardDark === 0 && cost.dark === floor.dark && cost.lastDay === floor.lastDay && cost.ascents === floor.ascents;
  const kept = Math.floor(budget.work * (1 - changeShare(problem.jobs.length)));
  const purse = { left: budget.work - kept };
  const spent = (): number => budget.work - kept - purse.left;
  let best: FoundOrder | undefined;
  for (const next of improvedOrders(ground, purse, isEnough)) {
    const found = settle(ground, next);
    if (best !== undefined && compareCosts(found.cost, best.cost) >= 0) continue;
    best = found;
    if (found.cost.hardDark === 0) yield answerOf({ ground, found, bound: floor, work: spent() });
    if (isEnough(found.cost)) return;
  }
  const below = best?.cost ?? noOrder;
  const exact = { left: Math.max(0, purse.left + kept) };
  const end = exactSearch({ ground, heads, order, leastDark: bounds.dark, below, isEnough }, exact);
  purse.left = exact.left - kept;
  const found = end.found === undefined ? best : settle(ground, end.found);
  if (found === undefined || found.cost.hardDark > 0) return;
  yield answerOf({ ground, found, bound: end.isWhole ? asCost(found.cost) : floor, work: spent() });
}

/** The first order found that keeps everything, whatever it costs; absent where none is found with the work given. */
export const someOrder = (problem: WorkProblem, budget: WorkBudget): WorkAnswer | undefined => {
  const base = groundWork(problem);
  if (base === undefined) return undefined;
  const { ground, heads, order, bounds } = base;
  if (bounds.isNone) return undefined;
  const isEnough = ({ hardDark }: SpotCost): boolean => hardDark === 0;
  const half = Math.floor(budget.work / 2);
  const purse = { left: half };
  for (const found of improvedOrders(ground, purse, isEnough)) {
    if (!isEnough(found.cost)) continue;
    return answerOf({ ground, found: settle(ground, found), bound: nothing, work: half - purse.left });
  }
  const exact = { left: half };
  const ask = { ground, heads, order, leastDark: bounds.dark, below: noOrder, isEnough };
  const { found } = exactSearch(ask, exact);
  return found === undefined
    ? undefined
    : answerOf({
        ground,
        found: settle(ground, found),
        bound: nothing,
        work: half - purse.left + half - exact.left,
      });
};

const nothing: WorkCost = { dark: 0, lastDay: 0, ascents: 0 };

const noOrder: SpotCost = { hardDark: 1, dark: Number.MAX_SAFE_INTEGER, lastDay: 0, ascents: 0, ends: 0 };

const asCost = ({ dark, lastDay, ascents }: SpotCost): WorkCost => ({ dark, lastDay, ascents });

const answerOf = ({
  ground,
  found,
  bound,
  work,
}: {
  readonly ground: Ground;
  readonly found: FoundOrder;
  readonly bound: WorkCost;
  readonly work: number;
}): WorkAnswer => {
  const { problem, from } = ground;
  const { spots, cost } = found;
  const starts = spots.map(({ begin, hands }, n) => {
    const day = Math.floor(begin / daySlots);
    return {
      job: problem.jobs[n]?.id ?? '',
      day,
      slot: begin - day * daySlots - from,
      hands: hands.map((hand) => problem.hands[hand]?.id ?? ''),
    };
  });
  const isProven = compareCosts({ ...cost, ...bound, hardDark: 0 }, { ...cost, hardDark: 0 }) === 0;
  return {
    problem: problem.hash,
    starts: starts.sort((a, b) => a.day - b.day || a.slot - b.slot || (a.job < b.job ? -1 : 1)),
    cost: asCost(cost),
    bound,
    status: isProven ? 'proven' : 'gap',
    work,
  };
};
