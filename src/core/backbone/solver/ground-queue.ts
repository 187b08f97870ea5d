import { baseCost } from './base-cost.ts';
import { FeedSieve } from './feed-sieve.ts';
import type { Ground, LeadOption } from './ground.ts';
import type { Purse } from './search-trunks.ts';
import type { TrunkGraph } from './sweep.ts';
import { fitting } from './sweep-field.ts';
import { pointTrunk, type Trunk } from './trunk.ts';
import { TrunkLister } from './trunk-lister.ts';

/** A trunk and a cost that no layout on it is under. */
export interface NextTrunk {
  readonly trunk: Trunk;
  readonly floor: number;
}

/** The trunks of one ground in rising order of their floors: those of no length among those of the lister. */
export class GroundQueue {
  readonly ground: Ground;
  readonly leads: readonly LeadOption[];
  /** tells which feeds may serve a trunk */
  readonly sieve: FeedSieve;
  readonly #points: NextTrunk[];
  readonly #lister: TrunkLister | undefined;

  constructor({
    ground,
    graph,
    leads,
  }: {
    readonly ground: Ground;
    /** absent where every trunk has no length */
    readonly graph: TrunkGraph | undefined;
    readonly leads: readonly LeadOption[];
  }) {
    this.ground = ground;
    this.leads = leads;
    this.sieve = new FeedSieve(ground, leads);
    this.#points = pointTrunks(ground, leads);
    this.#lister = graph === undefined ? undefined : new TrunkLister({ ground, graph, baseCost: baseCost(ground) });
  }

  /** No trunk still to come costs less. */
  get floor(): number {
    return Math.min(this.#points[0]?.floor ?? Number.POSITIVE_INFINITY, this.#listed);
  }

  get #listed(): number {
    return this.#lister?.floor ?? Number.POSITIVE_INFINITY;
  }

  /** The next trunk; nothing when none is left, or the purse is empty. */
  next(purse: Purse): NextTrunk | undefined {
    const point = this.#points[0];
    if (point !== undefined && point.floor <= this.#listed) return this.#points.shift();
    const listed = this.#lister?.next(purse);
    return listed === undefined ? undefined : { trunk: { times: listed.times, home: 0 }, floor: listed.floor };
  }
}

/** Every place that can have all tees, cheapest first. */
const pointTrunks = (ground: Ground, leads: readonly LeadOption[]): NextTrunk[] => {
  if (ground.isHeld) return [];
  const points = ground.problem.places.flatMap(({ end, tees }, place): NextTrunk[] => {
    const lead = leads.find((entry) => entry.place === place);
    if (!end || !tees || lead === undefined || ground.spares.some((spare) => spare.place !== place)) return [];
    let floor = baseCost(ground) + lead.cost;
    for (const device of ground.devices) {
      floor += fitting(ground, device).find((option) => option.place === place)?.cost ?? Number.POSITIVE_INFINITY;
    }
    return floor === Number.POSITIVE_INFINITY ? [] : [{ trunk: pointTrunk(ground, place), floor }];
  });
  return points.sort((one, other) => one.floor - other.floor);
};
