import type { ProblemGrade } from '../problem.ts';
import type { FoundPlan } from './found-plan.ts';
import type { Ground } from './ground.ts';
import { type Purse, TrunkSearch } from './search-trunks.ts';
import { isBetter } from './trunk-value.ts';

/**
 * Good layouts in a moment, without proof: a search on each ground in turn, cheapest grade first. Yields each layout better
 * than the one before; it may break limits, and then its violation says how far.
 */
export function* quickSearch(grounds: readonly Ground[], purse: Purse): Generator<FoundPlan> {
  let best: FoundPlan | undefined;
  const searched: { readonly grade: ProblemGrade; readonly refusedCost: number }[] = [];
  for (const ground of grounds) {
    if (best?.plan.value.violation === 0 && cannotBetter({ ground, cost: best.plan.value.cost, searched })) continue;
    // Half of what is left, so that a grade which cannot carry the bus leaves work for those that can.
    const own: Purse = { left: Math.ceil(purse.left / 2) };
    const given = own.left;
    const search = new TrunkSearch(ground, own);
    for (const plan of search.run()) {
      if (best !== undefined && !isBetter(plan.value, best.plan.value)) continue;
      best = { ground, plan };
      yield best;
    }
    purse.left -= given - own.left;
    searched.push({ grade: ground.grade, refusedCost: search.refusedCost });
  }
}

/** A grade dearer in every metre only helps where limits kept something cheaper out. */
const cannotBetter = ({
  ground: { grade },
  cost,
  searched,
}: {
  readonly ground: Ground;
  readonly cost: number;
  readonly searched: readonly { readonly grade: ProblemGrade; readonly refusedCost: number }[];
}): boolean =>
  searched.some(
    ({ grade: other, refusedCost }) =>
      refusedCost >= cost && other.trunkPerM <= grade.trunkPerM && other.dropPerM <= grade.dropPerM,
  );
