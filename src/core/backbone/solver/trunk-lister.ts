import { type ArcWeights, costToGo, noWeights, wayWeight } from './cost-to-go.ts';
import type { Ground } from './ground.ts';
import { Heap } from './heap.ts';
import type { Purse } from './search-trunks.ts';
import { complete, type TrunkGraph } from './sweep.ts';
import { bindingMultipliers, type Multipliers } from './trunk-multipliers.ts';

/** A trunk by how often it runs through each way, and a cost that no layout on it is under. */
export interface ListedTrunk {
  readonly times: Uint8Array;
  readonly floor: number;
}

/** The first ways of a trunk: the node they lead to, and what they add up to. */
interface Start {
  readonly node: number;
  /** how many ways are decided */
  readonly depth: number;
  readonly cost: number;
  readonly boughtMm: number;
  readonly trunkMaxMm: number;
  readonly floor: number;
  readonly before: Start | undefined;
  readonly times: number;
}

/**
 * Lists the trunks of one ground in the order of their least cost, as far as the limits on all drops and on the length of
 * the trunk leave them; other limits are not looked at. Every floor is exact but for these limits, which are priced by
 * multipliers: no layout costs less than its trunk's floor, and no trunk still to come has a lower one.
 */
export class TrunkLister {
  /** no trunk still to come costs less; infinite when none is to come */
  floor = Number.POSITIVE_INFINITY;
  readonly #ground: Ground;
  readonly #graph: TrunkGraph;
  readonly #weights: ArcWeights;
  readonly #multipliers: Multipliers;
  readonly #costToGo: Float64Array;
  readonly #pricedToGo: Float64Array;
  readonly #boughtToGo: Float64Array;
  readonly #trunkToGo: Float64Array;
  readonly #waiting = new Heap<Start>((one, other) => one.floor - other.floor || other.node - one.node);

  constructor({
    ground,
    graph,
    baseCost,
  }: {
    readonly ground: Ground;
    readonly graph: TrunkGraph;
    /** what every layout costs besides trunk, drops and feed lead */
    readonly baseCost: number;
  }) {
    const { ways, grade } = ground;
    this.#ground = ground;
    this.#graph = graph;
    this.#weights = { ...noWeights, trunkMm: grade.trunkPerM, extra: 1000, dropMm: grade.dropPerM, lead: 1 };
    this.#costToGo = costToGo({ graph, ways, weights: this.#weights });
    this.#boughtToGo = costToGo({ graph, ways, weights: { ...noWeights, boughtMm: 1 } });
    this.#trunkToGo = costToGo({ graph, ways, weights: { ...noWeights, trunkMaxMm: 1 } });
    this.#multipliers = bindingMultipliers({ ground, graph, weights: this.#weights, toGo: this.#costToGo });
    const { boughtMm, trunkMaxMm } = this.#multipliers;
    this.#pricedToGo =
      boughtMm + trunkMaxMm === 0
        ? this.#costToGo
        : costToGo({ graph, ways, weights: { ...this.#weights, boughtMm, trunkMaxMm } });
    this.#push({
      node: 0,
      depth: 0,
      cost: baseCost,
      boughtMm: 0,
      trunkMaxMm: 0,
      floor: 0,
      before: undefined,
      times: 0,
    });
    this.floor = this.#waiting.first?.floor ?? Number.POSITIVE_INFINITY;
  }

  /** The next trunk; nothing when none is left, or the purse is empty (`floor` tells which). */
  next(purse: Purse): ListedTrunk | undefined {
    for (let start = this.#waiting.pop(); start !== undefined; start = this.#waiting.pop()) {
      if (start.node === complete) {
        this.floor = this.#waiting.first?.floor ?? Number.POSITIVE_INFINITY;
        return { times: this.#timesOf(start), floor: start.floor };
      }
      if (purse.left <= 0) {
        this.#waiting.push(start);
        break;
      }
      purse.left -= 1;
      this.#leave(start);
    }
    this.floor = this.#waiting.first?.floor ?? Number.POSITIVE_INFINITY;
    return undefined;
  }

  #leave(start: Start): void {
    const way = this.#ground.ways[this.#graph.layers[start.depth]?.way ?? 0];
    if (way === undefined) return;
    const { arcStart, arcTo, arcTimes, arcDropMm, arcBoughtMm, arcLead } = this.#graph;
    const arcEnd = arcStart[start.node + 1] ?? 0;
    for (let arc = arcStart[start.node] ?? 0; arc < arcEnd; arc += 1) {
      const times = arcTimes[arc] ?? 0;
      const dropCost = this.#weights.dropMm * (arcDropMm[arc] ?? 0) + (arcLead[arc] ?? 0);
      this.#push({
        node: arcTo[arc] ?? complete,
        depth: start.depth + 1,
        cost: start.cost + times * wayWeight(this.#weights, way) + dropCost,
        boughtMm: start.boughtMm + (arcBoughtMm[arc] ?? 0),
        trunkMaxMm: start.trunkMaxMm + times * way.maxMm,
        floor: start.floor,
        before: start,
        times,
      });
    }
  }

  /** Keeps a start unless it cannot be led on within the limits. */
  #push(start: Start): void {
    const { node } = start;
    const toGo = (list: Float64Array): number => (node === complete ? 0 : (list[node] ?? Number.POSITIVE_INFINITY));
    const { dropsMm } = this.#ground.problem.limits;
    const { limitMm } = this.#ground;
    if (start.boughtMm + toGo(this.#boughtToGo) > dropsMm) return;
    if (start.trunkMaxMm + toGo(this.#trunkToGo) > limitMm) return;
    const { boughtMm, trunkMaxMm } = this.#multipliers;
    const priced = boughtMm * (start.boughtMm - dropsMm) + trunkMaxMm * (start.trunkMaxMm - limitMm);
    const floor = Math.max(
      start.floor,
      start.cost + toGo(this.#costToGo),
      start.cost + priced + toGo(this.#pricedToGo),
    );
    if (floor < Number.POSITIVE_INFINITY) this.#waiting.push({ ...start, floor });
  }

  #timesOf(end: Start): Uint8Array {
    const times = new Uint8Array(this.#ground.ways.length);
    for (let start = end; start.before !== undefined; start = start.before) {
      times[this.#graph.layers[start.before.depth]?.way ?? 0] = start.times;
    }
    return times;
  }
}
