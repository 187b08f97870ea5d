import { type ArcWeights, costToGo, wayWeight } from './cost-to-go.ts';
import type { Ground } from './ground.ts';
import { complete, type TrunkGraph } from './sweep.ts';

/** What a millimetre of drop as bought, and of trunk at its longest, is priced at where their limits bind; else 0. */
export interface Multipliers {
  readonly boughtMm: number;
  readonly trunkMaxMm: number;
}

/** Prices are whole, so that sums stay exact; none is ever higher than this. */
const highestPrice = 1 << 20;
const rounds = 2;

/**
 * Whole multipliers at which the least priced cost of all trunks is greatest or nearly: each limit that the cheapest trunk
 * breaks is priced in turn, until the trunk that is cheapest with the price just keeps it. Any multipliers give a lower
 * bound; good ones give a close one.
 */
export const bindingMultipliers = ({
  ground,
  graph,
  weights,
  toGo,
}: {
  readonly ground: Ground;
  readonly graph: TrunkGraph;
  readonly weights: ArcWeights;
  /** least cost to go without multipliers */
  readonly toGo: Float64Array;
}): Multipliers => {
  let prices: Multipliers = { boughtMm: 0, trunkMaxMm: 0 };
  const limits: Multipliers = { boughtMm: ground.problem.limits.dropsMm, trunkMaxMm: ground.limitMm };
  const use = (at: Multipliers): Multipliers => {
    const priced = { ...weights, ...at };
    const isFree = at.boughtMm + at.trunkMaxMm === 0;
    return usedBy({
      ground,
      graph,
      weights: priced,
      toGo: isFree ? toGo : costToGo({ graph, ways: ground.ways, weights: priced }),
    });
  };
  for (let round = 0; round < rounds; round += 1) {
    for (const of of ['boughtMm', 'trunkMaxMm'] as const) {
      const breaks = (price: number): boolean => use({ ...prices, [of]: price })[of] > limits[of];
      if (!breaks(0)) {
        prices = { ...prices, [of]: 0 };
        continue;
      }
      let [low, high] = [0, 1];
      while (high < highestPrice && breaks(high)) [low, high] = [high, 4 * high];
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (breaks(middle)) low = middle;
        else high = middle;
      }
      prices = { ...prices, [of]: high };
    }
  }
  return prices;
};

/** What the cheapest trunk uses of each limit. */
const usedBy = ({
  ground,
  graph,
  weights,
  toGo,
}: {
  readonly ground: Ground;
  readonly graph: TrunkGraph;
  readonly weights: ArcWeights;
  readonly toGo: Float64Array;
}): Multipliers => {
  const { layers, arcStart, arcTo, arcTimes, arcDropMm, arcBoughtMm, arcLead } = graph;
  let used: Multipliers = { boughtMm: 0, trunkMaxMm: 0 };
  let node = 0;
  if (toGo[0] === Number.POSITIVE_INFINITY) return used;
  for (const layer of layers) {
    const way = ground.ways[layer.way];
    if (way === undefined || node === complete) break;
    let best = { weight: Number.POSITIVE_INFINITY, arc: 0 };
    for (let arc = arcStart[node] ?? 0; arc < (arcStart[node + 1] ?? 0); arc += 1) {
      const to = arcTo[arc] ?? complete;
      const weight =
        (to === complete ? 0 : (toGo[to] ?? 0)) +
        wayWeight(weights, way) * (arcTimes[arc] ?? 0) +
        weights.dropMm * (arcDropMm[arc] ?? 0) +
        weights.boughtMm * (arcBoughtMm[arc] ?? 0) +
        weights.lead * (arcLead[arc] ?? 0);
      if (weight < best.weight) best = { weight, arc };
    }
    used = {
      boughtMm: used.boughtMm + (arcBoughtMm[best.arc] ?? 0),
      trunkMaxMm: used.trunkMaxMm + way.maxMm * (arcTimes[best.arc] ?? 0),
    };
    node = arcTo[best.arc] ?? complete;
  }
  return used;
};
