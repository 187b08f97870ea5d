import { byCodeUnit } from '../boat/ids.ts';
import type { Budget, Layout, Problem, ProblemGrade } from './problem.ts';
import { type Ground, layGround } from './solver/ground.ts';
import { layoutBound } from './solver/layout-bound.ts';
import { type Purse, TrunkSearch } from './solver/search-trunks.ts';
import type { TeePlan } from './solver/tee-plan.ts';
import { isBetter } from './solver/trunk-value.ts';
import { writeWalk } from './solver/write-layout.ts';

/**
 * Layouts for a problem, each cheaper than the one before: `proven` when the cost equals the bound, else `gap`. Equal
 * problem and budget give equal layouts. Every grade is searched within its warn limits of length and lost volts, within
 * its fail limits only where nothing else fits. Where no layout keeping every limit is found, the last and only one yielded
 * is the one that breaks them least, with status `infeasible`; nothing is yielded where no trunk can be laid at all.
 */
export function* solveLayout(problem: Problem, budget: Budget): Generator<Layout> {
  let left = budget.work;
  const bound = layoutBound(problem);
  let best: { readonly ground: Ground; readonly plan: TeePlan } | undefined;
  const layout = (status: Layout['status']): Layout[] => {
    if (best === undefined) return [];
    const { ground, plan } = best;
    const { cost } = plan.value;
    return [
      {
        problem: problem.hash,
        grade: ground.grade.id,
        walk: writeWalk(ground, plan),
        cost,
        bound: Math.min(bound, cost),
        status,
        work: budget.work - left,
      },
    ];
  };
  // no layout mends that there are too many devices; the cheapest of the rest is still worth seeing
  const holds = ({ value }: TeePlan): boolean =>
    value.violation === 0 && problem.devices.length <= problem.limits.devices;
  const searched: { readonly grade: ProblemGrade; readonly refusedCost: number }[] = [];
  for (const ground of grounds(problem)) {
    if (best?.plan.value.violation === 0 && cannotBetter({ ground, cost: best.plan.value.cost, searched })) continue;
    // Half of what is left, so that a grade which cannot carry the bus leaves work for those that can.
    const purse: Purse = { left: Math.ceil(left / 2) };
    const kept = left - purse.left;
    const search = new TrunkSearch(ground, purse);
    for (const plan of search.run()) {
      left = kept + purse.left;
      if (best !== undefined && !isBetter(plan.value, best.plan.value)) continue;
      best = { ground, plan };
      if (holds(plan)) yield* layout(plan.value.cost === bound ? 'proven' : 'gap');
      if (holds(plan) && plan.value.cost === bound) return;
    }
    left = kept + purse.left;
    searched.push({ grade: ground.grade, refusedCost: search.refusedCost });
  }
  if (best !== undefined && !holds(best.plan)) yield* layout('infeasible');
}

/**
 * Whether a grade need not be searched once a layout is found: limits over the warn limits are for buses that
 * nothing else fits, and a grade dearer in every metre only helps where limits kept something cheaper out.
 */
const cannotBetter = ({
  ground: { grade, stretched },
  cost,
  searched,
}: {
  readonly ground: Ground;
  readonly cost: number;
  readonly searched: readonly { readonly grade: ProblemGrade; readonly refusedCost: number }[];
}): boolean =>
  stretched ||
  searched.some(
    ({ grade: other, refusedCost }) =>
      refusedCost >= cost && other.trunkPerM <= grade.trunkPerM && other.dropPerM <= grade.dropPerM,
  );

/** Whether the fail limits leave more room than the warn limits. */
const mayStretch = ({ feed: { lostMv } }: Problem, { warnMm, failMm }: ProblemGrade): boolean =>
  failMm > warnMm || (lostMv !== undefined && lostMv.fail > lostMv.warn);

/** Every grade within its warn limits, cheapest first, then those whose fail limits leave more room within these. */
const grounds = (problem: Problem): readonly Ground[] => {
  const grades = [...problem.grades].sort(
    (one, other) => one.trunkPerM - other.trunkPerM || one.dropPerM - other.dropPerM || byCodeUnit(one.id, other.id),
  );
  const ground = (grade: ProblemGrade, stretched: boolean): Ground => layGround({ problem, grade, stretched });
  return [
    ...grades.map((grade) => ground(grade, false)),
    ...grades.filter((grade) => mayStretch(problem, grade)).map((grade) => ground(grade, true)),
  ];
};

/** Work for a quick layout: enough for a boat of fifteen devices in a fraction of a second. */
const quickWork = 4000;

/**
 * A good layout in a moment, for a plan that was given none: status `heuristic`, or `infeasible` where none keeping every
 * limit was found. Absent where no trunk can be laid at all.
 */
export const heuristicLayout = (problem: Problem): Layout | undefined => {
  const last = [...solveLayout(problem, { work: quickWork })].at(-1);
  if (last === undefined || last.status === 'infeasible') return last;
  return { ...last, status: 'heuristic' };
};
