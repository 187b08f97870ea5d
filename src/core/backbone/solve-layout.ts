import { byCodeUnit } from '../boat/ids.ts';
import type { Budget, Layout, Problem, ProblemGrade } from './problem.ts';
import { exactSearch } from './solver/exact-search.ts';
import type { FoundPlan } from './solver/found-plan.ts';
import { type Ground, layGround } from './solver/ground.ts';
import { quickSearch } from './solver/quick-search.ts';
import type { Purse } from './solver/search-trunks.ts';
import { writeWalk } from './solver/write-layout.ts';

/** What is kept back of the work while the warn limits are searched, for the case that nothing keeps them. */
const keptShare = 0.2;

/**
 * Layouts for a problem, each cheaper than the one before or with a higher bound: `proven` when the cost equals the bound,
 * else `gap`. Equal problem and budget give equal layouts. All grades are searched within their warn limits of length and
 * lost volts; within their fail limits only where no layout keeping the warn limits is found. The bound holds for layouts
 * within the same limits. Where no layout keeping every limit is found, the only one yielded is the one that breaks them
 * least, with status `infeasible`; nothing is yielded where no trunk can be laid at all.
 */
export function* solveLayout(problem: Problem, budget: Budget): Generator<Layout> {
  let isAnswered = false;
  for (const layout of searchTiers({ problem, budget })) {
    isAnswered = true;
    yield layout;
  }
  if (!isAnswered) yield* leastBroken({ problem, budget });
}

/** A layout that keeps every limit, absent where none was found, and the work it took to find it or to give up. */
export interface KeptLayout {
  readonly layout?: Layout;
  readonly work: number;
}

/**
 * Whether some layout keeps every limit: the cheapest found with the work given, or the first where that is enough. Where it
 * is proven that there is none, little work is done.
 */
export const keptLayout = (problem: Problem, budget: Budget & { readonly isFirstEnough?: boolean }): KeptLayout => {
  const search = searchTiers({ problem, budget });
  let layout: Layout | undefined;
  for (let next = search.next(); ; next = search.next()) {
    if (next.done === true) {
      if (layout !== undefined) return { layout, work: next.value.work };
      return next.value.isNone ? { work: next.value.work } : luckyLayout(problem, next.value.work);
    }
    layout = next.value;
    if (budget.isFirstEnough === true) return { layout, work: layout.work };
  }
};

/** A layout that breaks limits least may be found by luck to break none. */
const luckyLayout = (problem: Problem, spent: number): KeptLayout => {
  const last = [...leastBroken({ problem, budget: { work: brokenWork } })].at(-1);
  const work = spent + brokenWork;
  return last === undefined || last.status === 'infeasible' ? { work } : { layout: { ...last, work }, work };
};

/**
 * The cheapest layout whose trunk takes other ways than that of a layout, or is of another grade; its bound and status say
 * how sure that is. Absent where no other is found that keeps every limit.
 */
export const runnerUpLayout = (problem: Problem, layout: Layout, budget: Budget): Layout | undefined =>
  [...searchTiers({ problem, budget, unlike: layout })].at(-1);

function* searchTiers({
  problem,
  budget,
  unlike,
}: {
  readonly problem: Problem;
  readonly budget: Budget;
  readonly unlike?: Layout;
}): Generator<Layout, { readonly isNone: boolean; readonly work: number }> {
  const purse: Purse = { left: budget.work };
  let isAnswered = false;
  let isNone = true;
  let floor = Number.POSITIVE_INFINITY;
  for (const isStretched of [false, true]) {
    const tier = isAnswered ? [] : groundsOf(problem, isStretched);
    if (tier.length === 0) continue;
    const kept = isStretched ? 0 : Math.floor(purse.left * keptShare);
    purse.left -= kept;
    const search = searchTier({ problem, tier, unlike, purse, emptyBelow: floor });
    for (let next = search.next(); ; next = search.next()) {
      if (next.done === true) {
        floor = next.value;
        isNone &&= floor === Number.POSITIVE_INFINITY;
        break;
      }
      isAnswered = true;
      yield asLayout({ problem, ...next.value, work: budget.work - purse.left - kept });
    }
    purse.left += kept;
  }
  return { isNone: isNone && !isAnswered, work: budget.work - purse.left };
}

/** Searches grounds with like limits; returns a cost that no layout on them is under, infinite where there is none. */
function* searchTier({
  problem,
  tier,
  unlike,
  purse,
  emptyBelow,
}: {
  readonly problem: Problem;
  readonly tier: readonly Ground[];
  readonly unlike: Layout | undefined;
  readonly purse: Purse;
  /** a layout keeping stricter limits may be found from this cost on; infinite where none exists */
  readonly emptyBelow: number;
}): Generator<{ found: FoundPlan; bound: number }, number> {
  let said: { found: FoundPlan | undefined; bound: number } = { found: undefined, bound: 0 };
  let bound = 0;
  for (const state of exactSearch({ problem, grounds: tier, unlike, purse })) {
    const cost = state.found?.plan.value.cost ?? Number.POSITIVE_INFINITY;
    // As long as stricter limits may be kept, nothing that only keeps these is proven.
    bound = emptyBelow === Number.POSITIVE_INFINITY ? state.bound : Math.min(state.bound, emptyBelow, cost - 1);
    if (state.found === undefined || (state.found === said.found && bound === said.bound)) continue;
    said = { found: state.found, bound };
    yield { found: state.found, bound };
  }
  return bound;
}

const asLayout = ({
  problem,
  found: { ground, plan },
  bound,
  work,
}: {
  readonly problem: Problem;
  readonly found: FoundPlan;
  readonly bound: number;
  readonly work: number;
}): Layout => {
  const { cost } = plan.value;
  return {
    problem: problem.hash,
    grade: ground.grade.id,
    walk: writeWalk(ground, plan),
    cost,
    bound: Math.min(bound, cost),
    status: cost === bound ? 'proven' : 'gap',
    work,
  };
};

/** Work for a layout that breaks the limits least: no more helps to see what is in the way. */
const brokenWork = 4000;

/** The layout nearest to keeping the limits, though it keeps them not; a tier may find one by luck that does. */
function* leastBroken({ problem, budget }: { readonly problem: Problem; readonly budget: Budget }): Generator<Layout> {
  const all = [...groundsOf(problem, false), ...groundsOf(problem, true)];
  const purse: Purse = { left: Math.min(brokenWork, budget.work) };
  let last: FoundPlan | undefined;
  for (const found of quickSearch(all, purse)) last = found;
  if (last === undefined) return;
  const layout = asLayout({ problem, found: last, bound: 0, work: budget.work });
  const holds = last.plan.value.violation === 0 && problem.devices.length <= problem.limits.devices;
  yield holds ? layout : { ...layout, status: 'infeasible' };
}

/** Whether the fail limits leave more room than the warn limits. */
const mayStretch = ({ feed: { lostMv } }: Problem, { warnMm, failMm }: ProblemGrade): boolean =>
  failMm > warnMm || (lostMv !== undefined && lostMv.fail > lostMv.warn);

/** Every grade within its warn limits, cheapest first; or those whose fail limits leave more room, within these. */
const groundsOf = (problem: Problem, isStretched: boolean): readonly Ground[] =>
  [...problem.grades]
    .sort(
      (one, other) => one.trunkPerM - other.trunkPerM || one.dropPerM - other.dropPerM || byCodeUnit(one.id, other.id),
    )
    .filter((grade) => !isStretched || mayStretch(problem, grade))
    .map((grade) => layGround({ problem, grade, stretched: isStretched }));

/** Work for a layout while a person waits for a plan. */
const hurriedWork = 20_000;

/**
 * A good layout in a moment, for a plan that was given none: status `heuristic`, or `infeasible` where none keeping every
 * limit was found. Absent where no trunk can be laid at all.
 */
export const heuristicLayout = (problem: Problem): Layout | undefined => {
  const last = [...solveLayout(problem, { work: hurriedWork })].at(-1);
  if (last === undefined || last.status === 'infeasible') return last;
  return { ...last, status: 'heuristic' };
};
