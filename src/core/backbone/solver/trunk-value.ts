import type { Ground } from './ground.ts';
import type { Trunk, TrunkShape } from './trunk.ts';

/** How good a layout is: first how far it breaks its limits (0 when it holds), then its cost, then its trunk. */
export interface Value {
  /** millimetres, millivolts and milliamperes over the limits, added; a thing missing counts as a thousand kilometres */
  readonly violation: number;
  readonly cost: number;
  readonly trunkMm: number;
}

/** What a missing device, spare or feed counts in a violation. */
export const missingMm = 1_000_000_000;

export const isBetter = (one: Value, other: Value): boolean => {
  if (one.violation !== other.violation) return one.violation < other.violation;
  if (one.cost !== other.cost) return one.cost < other.cost;
  return one.trunkMm < other.trunkMm;
};

/**
 * The value of a trunk when every device takes its cheapest drop and the feed its cheapest place, whatever that does to
 * the farthest pair, to currents and volts, and the drops all together count their least: never worse than the value of
 * any layout on it.
 */
export const trunkValue = ({
  ground,
  trunk,
  shape,
}: {
  readonly ground: Ground;
  readonly trunk: Trunk;
  readonly shape: TrunkShape;
}): Value => {
  const { passes } = shape;
  let violation = 0;
  let cost = ground.fixedCost;
  let trunkMm = 0;
  let longestMm = 0;
  for (const [way, n] of trunk.times.entries()) {
    const used = n === 0 ? undefined : ground.ways[way];
    if (used === undefined) continue;
    cost += n * used.cost;
    trunkMm += n * used.mm;
    longestMm += n * used.maxMm;
  }
  violation += Math.max(0, longestMm - ground.limitMm);
  const drops = cheapestDrops({ ground, passes });
  violation += drops.violation;
  cost += drops.cost;
  for (const { place, count } of ground.spares) {
    if (passes[place] === 1) cost += count * ground.teeCost;
    else violation += count * missingMm;
  }
  const lead = ground.leads.find(({ place }) => passes[place] === 1);
  if (lead === undefined) violation += missingMm;
  else cost += lead.cost + ground.feedCost;
  return { violation, cost, trunkMm };
};

const cheapestDrops = ({
  ground,
  passes,
}: {
  readonly ground: Ground;
  readonly passes: Uint8Array;
}): Pick<Value, 'violation' | 'cost'> => {
  const { dropMm, dropsMm } = ground.problem.limits;
  let [violation, cost, leastDropsMm] = [0, 0, 0];
  for (const { options, shortest } of ground.devices) {
    leastDropsMm += shortest.find(({ place }) => passes[place] === 1)?.boughtMm ?? 0;
    const option = options.find(({ place }) => passes[place] === 1);
    if (option === undefined) violation += missingMm;
    else {
      cost += option.cost + ground.teeCost;
      violation += Math.max(0, option.boughtMm - dropMm);
    }
  }
  return { violation: violation + Math.max(0, leastDropsMm - dropsMm), cost };
};
