import { byCodeUnit } from '../../boat/ids.ts';
import { canonicalJson } from '../canonical-json.ts';
import type { FeedSieve } from './feed-sieve.ts';
import type { Ground, LeadOption } from './ground.ts';
import { isLong, type Narrowing, TeeHanger } from './hang-tees.ts';
import type { Purse } from './search-trunks.ts';
import { fitting } from './sweep-field.ts';
import { type MeasuredWalk, measureWalk, type TeePlan } from './tee-plan.ts';
import { type Trunk, trunkShape } from './trunk.ts';
import { trunkWalks } from './trunk-walks.ts';

/** What tells layouts of one cost apart, in the order in which it counts; of each the lesser comes first. */
interface Rank {
  readonly trunkMm: number;
  readonly longDrops: number;
  /** numbers of the places of the tees, by device */
  readonly teePlaces: readonly number[];
  /** how often the trunk runs through each way */
  readonly times: readonly number[];
  readonly walk: string;
}

/** A plan with its rank among those of its cost. */
export interface RankedPlan {
  readonly plan: TeePlan;
  readonly rank: Rank;
}

const byEach = (one: readonly number[], other: readonly number[]): number => {
  for (const [n, value] of one.entries()) {
    const by = value - (other[n] ?? 0);
    if (by !== 0) return by;
  }
  return 0;
};

/** Order of two plans of one cost: metres of trunk, long drops, places of the tees, ways used, the walk. */
export const byRank = ({ rank: one }: RankedPlan, { rank: other }: RankedPlan): number =>
  one.trunkMm - other.trunkMm ||
  one.longDrops - other.longDrops ||
  byEach(one.teePlaces, other.teePlaces) ||
  byEach(one.times, other.times) ||
  byCodeUnit(one.walk, other.walk);

const longDrops = ({ tees }: TeePlan): number =>
  tees.reduce((sum, tee) => sum + (tee !== undefined && isLong(tee.option) ? 1 : 0), 0);

/** A walk as text, in the direction whose text comes first. */
const walkText = (ground: Ground, { walk }: TeePlan): string => {
  const places = walk.places.map((place) => ground.problem.places[place]?.id ?? '');
  const ways = walk.ways.map((way) => ground.ways[way]?.id ?? '');
  const [forth, back] = [canonicalJson([places, ways]), canonicalJson([places.toReversed(), ways.toReversed()])];
  return byCodeUnit(back, forth) < 0 ? back : forth;
};

const ranked = (ground: Ground, trunk: Trunk, plan: TeePlan): RankedPlan => ({
  plan,
  rank: {
    trunkMm: plan.value.trunkMm,
    longDrops: longDrops(plan),
    teePlaces: plan.tees.map((tee) => tee?.option.place ?? -1),
    times: [...trunk.times],
    walk: walkText(ground, plan),
  },
});

interface WalkOfEquals {
  readonly ground: Ground;
  readonly leads: readonly LeadOption[];
  readonly measured: MeasuredWalk;
  readonly cost: number;
  readonly purse: Purse;
}

/** What a layout of this cost may spend on drops beyond the cheapest of each device on the walk. */
const spareCost = ({ ground, leads, measured, cost }: WalkOfEquals): number => {
  const tees = ground.spares.reduce((sum, { count }) => sum + count, ground.devices.length);
  let least = ground.fixedCost + ground.feedCost + measured.cost + tees * ground.teeCost;
  least += leads.find(({ place }) => measured.stepsAt.has(place))?.cost ?? 0;
  for (const device of ground.devices) least += cheapestOn(ground, device, measured);
  return cost - least;
};

const cheapestOn = (ground: Ground, device: Ground['devices'][number], { stepsAt }: MeasuredWalk): number =>
  fitting(ground, device).find(({ place }) => stepsAt.has(place))?.cost ?? Number.POSITIVE_INFINITY;

/**
 * On one walk the first of the plans of a cost that nothing undercuts: with the fewest long drops, then each device in turn
 * at the first place that leaves a plan of that cost. Nothing where the walk has none.
 */
const firstOnWalk = (own: WalkOfEquals): TeePlan | undefined => {
  const { ground, leads, measured, cost, purse } = own;
  const hang = (narrowing?: Narrowing): TeePlan | undefined =>
    new TeeHanger({
      ground,
      leads,
      measured,
      purse,
      under: cost + 1,
      enough: cost,
      ...(narrowing === undefined ? {} : { narrowing }),
    }).run();
  let plan = hang();
  if (plan === undefined) return undefined;
  for (let next: TeePlan | undefined = plan; next !== undefined && longDrops(plan) > 0; ) {
    next = hang({ at: new Map(), mostLong: longDrops(plan) - 1 });
    plan = next ?? plan;
  }
  const spare = spareCost(own);
  const [mostLong, at] = [longDrops(plan), new Map<number, number>()];
  for (const [number, device] of ground.devices.entries()) {
    const now = plan.tees[number]?.option.place ?? -1;
    const most = cheapestOn(ground, device, measured) + spare;
    const earlier = fitting(ground, device)
      .filter((option) => option.place < now && option.cost <= most && measured.stepsAt.has(option.place))
      .sort((one, other) => one.place - other.place);
    for (const { place } of earlier) {
      const next = hang({ at: new Map([...at, [number, place]]), mostLong });
      if (next === undefined) continue;
      plan = next;
      break;
    }
    at.set(number, plan.tees[number]?.option.place ?? now);
  }
  return plan;
};

/**
 * Of the plans on one trunk that cost so much, and that nothing undercuts, the first in rank over all walks through it.
 * Nothing where the trunk has none, or the purse is empty before one is found.
 */
export const firstOfEquals = ({
  ground,
  trunk,
  sieve,
  cost,
  purse,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  readonly sieve: FeedSieve;
  readonly cost: number;
  readonly purse: Purse;
}): RankedPlan | undefined => {
  const shape = trunkShape(ground, trunk);
  const trunkCost = ground.ways.reduce((sum, way, number) => sum + way.cost * (trunk.times[number] ?? 0), 0);
  const leads = sieve.feedsFor({ times: trunk.times, trunkCost, under: cost + 1 });
  let first: RankedPlan | undefined;
  for (const walk of trunkWalks({ ground, trunk, shape })) {
    if (purse.left <= 0) break;
    purse.left -= walk.places.length;
    const plan = firstOnWalk({ ground, leads, measured: measureWalk(ground, walk), cost, purse });
    const next = plan === undefined ? undefined : ranked(ground, trunk, plan);
    if (next !== undefined && (first === undefined || byRank(next, first) < 0)) first = next;
  }
  return first;
};
