import type { FeedSieve } from './feed-sieve.ts';
import type { Ground } from './ground.ts';
import { TeeHanger } from './hang-tees.ts';
import type { Purse } from './search-trunks.ts';
import { measureWalk, type TeePlan } from './tee-plan.ts';
import { type Trunk, trunkShape } from './trunk.ts';
import { trunkWalks } from './trunk-walks.ts';

/** The cheapest layout on one trunk, if any is under the cost asked; `complete` unless the purse ran empty before all was tried. */
export interface TrunkAnswer {
  readonly plan: TeePlan | undefined;
  readonly complete: boolean;
}

/**
 * The cheapest layout on one trunk that keeps every limit: every walk through it, every tee of every device, every place of
 * the feed. Stops at the first that costs no more than the floor of the trunk.
 */
export const bestOnTrunk = ({
  ground,
  trunk,
  floor,
  under,
  sieve,
  purse,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  /** no layout on this trunk costs less */
  readonly floor: number;
  readonly under: number;
  readonly sieve: FeedSieve;
  readonly purse: Purse;
}): TrunkAnswer => {
  let best: TeePlan | undefined;
  let limit = under;
  const shape = trunkShape(ground, trunk);
  const trunkCost = ground.ways.reduce((sum, { cost }, way) => sum + cost * (trunk.times[way] ?? 0), 0);
  const leads = sieve.feedsFor({ times: trunk.times, trunkCost, under });
  purse.left -= ground.leads.length;
  if (leads.length === 0) return { plan: undefined, complete: true };
  for (const walk of shape.walkable ? trunkWalks({ ground, trunk, shape }) : []) {
    purse.left -= walk.places.length;
    const plan = new TeeHanger({ ground, leads, measured: measureWalk(ground, walk), under: limit, purse }).run();
    if (plan !== undefined) {
      best = plan;
      limit = plan.value.cost;
    }
    if (limit <= floor || purse.left <= 0) break;
  }
  return { plan: best, complete: purse.left > 0 || limit <= floor };
};
