import { feedVolts, hungLoads } from './feed-volts.ts';
import type { Ground, LeadOption, TeeChoice } from './ground.ts';
import { missingMm, type Value } from './trunk-value.ts';
import type { TrunkWalk } from './trunk-walks.ts';

/** A walk with the tees on it; a device without a tee has no choice. Steps are counted from the start of the walk. */
export interface TeePlan {
  readonly walk: TrunkWalk;
  readonly tees: readonly (TeeChoice | undefined)[];
  readonly feed: { readonly step: number; readonly lead: LeadOption } | undefined;
  readonly value: Value;
}

/** A walk measured: longest distance of every step from the start, the steps at each place, cost and length of the trunk. */
export interface MeasuredWalk {
  readonly walk: TrunkWalk;
  readonly atMm: readonly number[];
  readonly stepsAt: ReadonlyMap<number, readonly number[]>;
  readonly trunkMm: number;
  readonly cost: number;
}

export const measureWalk = (ground: Ground, walk: TrunkWalk): MeasuredWalk => {
  const atMm = [0];
  let [trunkMm, cost] = [0, 0];
  for (const way of walk.ways) {
    const used = ground.ways[way];
    atMm.push((atMm.at(-1) ?? 0) + (used?.maxMm ?? 0));
    trunkMm += used?.mm ?? 0;
    cost += used?.cost ?? 0;
  }
  const stepsAt = new Map<number, number[]>();
  for (const [step, place] of walk.places.entries()) stepsAt.set(place, [...(stepsAt.get(place) ?? []), step]);
  return { walk, atMm, stepsAt, trunkMm, cost };
};

/**
 * Tests tees on a walk against every limit and finds their feed: of the positions that break least the cheapest, of those
 * the one with the least worst loss of volts, of those the first on the walk. Gives nothing where lengths alone break more
 * than `most`.
 */
export const judgeTees = ({
  ground,
  measured,
  tees,
  most = Number.POSITIVE_INFINITY,
}: {
  readonly ground: Ground;
  readonly measured: MeasuredWalk;
  readonly tees: readonly (TeeChoice | undefined)[];
  readonly most?: number;
}): TeePlan | undefined => {
  let violation = lengthViolation({ ground, measured, tees });
  let cost = ground.fixedCost + measured.cost;
  for (const tee of tees) {
    if (tee === undefined) violation += missingMm;
    else cost += tee.option.cost + ground.teeCost;
  }
  for (const { place, count } of ground.spares) {
    if (measured.stepsAt.has(place)) cost += count * ground.teeCost;
    else violation += count * missingMm;
  }
  if (violation > most) return undefined;
  const found = bestFeed({ ground, measured, tees });
  violation += found?.violation ?? missingMm;
  if (found !== undefined) cost += found.lead.cost + ground.feedCost;
  const feed = found === undefined ? undefined : { step: found.step, lead: found.lead };
  return { walk: measured.walk, tees, feed, value: { violation, cost, trunkMm: measured.trunkMm } };
};

const lengthViolation = ({
  ground,
  measured: { atMm },
  tees,
}: {
  readonly ground: Ground;
  readonly measured: MeasuredWalk;
  readonly tees: readonly (TeeChoice | undefined)[];
}): number => {
  const { dropMm, dropsMm } = ground.problem.limits;
  const trunkMm = atMm.at(-1) ?? 0;
  let overMm = 0;
  let allMm = 0;
  // Greatest |x_i - x_j| + d_i + d_j of two points at x with drops d: a best x + d met with a best d - x of another. The ends of
  // the trunk come first; a point meets only those before it, so never itself.
  let farthestMm = trunkMm;
  let [mostRight, mostLeft] = [trunkMm, 0];
  for (const tee of tees) {
    if (tee === undefined) continue;
    const { boughtMm } = tee.option;
    overMm += Math.max(0, boughtMm - dropMm);
    allMm += boughtMm;
    const xMm = atMm[tee.step] ?? 0;
    farthestMm = Math.max(farthestMm, mostRight + boughtMm - xMm, mostLeft + boughtMm + xMm);
    mostRight = Math.max(mostRight, xMm + boughtMm);
    mostLeft = Math.max(mostLeft, boughtMm - xMm);
  }
  return overMm + Math.max(0, allMm - dropsMm) + Math.max(0, farthestMm - ground.limitMm);
};

interface FoundFeed {
  readonly step: number;
  readonly lead: LeadOption;
  readonly violation: number;
  readonly worst: number;
}

const bestFeed = ({
  ground,
  measured,
  tees,
}: {
  readonly ground: Ground;
  readonly measured: MeasuredWalk;
  readonly tees: readonly (TeeChoice | undefined)[];
}): FoundFeed | undefined => {
  const { atMm, stepsAt } = measured;
  const loads = hungLoads(ground, { steps: atMm.length, tees });
  let best: FoundFeed | undefined;
  for (const lead of ground.leads) {
    // Leads come cheapest first: once one holds, only its equals can be better.
    if (best !== undefined && best.violation === 0 && lead.cost > best.lead.cost) break;
    for (const step of stepsAt.get(lead.place) ?? []) {
      const volts = feedVolts({
        ground,
        atMm,
        loads,
        step,
        lead,
        ...(best === undefined ? {} : { most: best.violation }),
      });
      const found = volts === undefined ? undefined : { step, lead, ...volts };
      if (found !== undefined && (best === undefined || isBetterFeed(found, best))) best = found;
    }
  }
  return best;
};

const isBetterFeed = (one: FoundFeed, other: FoundFeed): boolean => {
  if (one.violation !== other.violation) return one.violation < other.violation;
  if (one.lead.cost !== other.lead.cost) return one.lead.cost < other.lead.cost;
  return one.worst < other.worst;
};
