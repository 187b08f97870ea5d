import type { GroundWay } from './ground.ts';
import { complete, type TrunkGraph } from './sweep.ts';

/** What a millimetre of each kind and an hour of a way are worth in a sum over the arcs of a path. */
export interface ArcWeights {
  readonly trunkMm: number;
  readonly trunkMaxMm: number;
  readonly extra: number;
  readonly dropMm: number;
  readonly boughtMm: number;
  readonly lead: number;
}

export const noWeights: ArcWeights = { trunkMm: 0, trunkMaxMm: 0, extra: 0, dropMm: 0, boughtMm: 0, lead: 0 };

/** What it adds to run the trunk once through a way. */
export const wayWeight = (weights: ArcWeights, way: GroundWay): number =>
  weights.trunkMm * way.mm + weights.trunkMaxMm * way.maxMm + weights.extra * way.extra;

/** The least weight of any path from each node to a complete trunk; infinite where none leads there. */
export const costToGo = ({
  graph,
  ways,
  weights,
}: {
  readonly graph: TrunkGraph;
  readonly ways: readonly GroundWay[];
  readonly weights: ArcWeights;
}): Float64Array => {
  const { layers, layerStart, arcStart, arcTo, arcTimes, arcDropMm, arcBoughtMm, arcLead } = graph;
  const least = new Float64Array(arcStart.length - 1).fill(Number.POSITIVE_INFINITY);
  for (let at = layers.length - 1; at >= 0; at -= 1) {
    const way = ways[layers[at]?.way ?? 0];
    const once = way === undefined ? 0 : wayWeight(weights, way);
    const last = layerStart[at + 1] ?? 0;
    for (let node = layerStart[at] ?? 0; node < last; node += 1) {
      let best = Number.POSITIVE_INFINITY;
      const arcEnd = arcStart[node + 1] ?? 0;
      for (let arc = arcStart[node] ?? 0; arc < arcEnd; arc += 1) {
        const to = arcTo[arc] ?? complete;
        const weight =
          (to === complete ? 0 : (least[to] ?? 0)) +
          once * (arcTimes[arc] ?? 0) +
          weights.dropMm * (arcDropMm[arc] ?? 0) +
          weights.boughtMm * (arcBoughtMm[arc] ?? 0) +
          weights.lead * (arcLead[arc] ?? 0);
        if (weight < best) best = weight;
      }
      least[node] = best;
    }
  }
  return least;
};
