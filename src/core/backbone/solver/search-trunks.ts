import type { Ground } from './ground.ts';
import { placeTees } from './place-tees.ts';
import type { TeePlan } from './tee-plan.ts';
import { pointTrunk, type Trunk, type TrunkShape, trunkKey, trunkShape } from './trunk.ts';
import { type MoveGuide, trunkMoves, trunkTargets } from './trunk-moves.ts';
import { trunkPaths, trunkRings } from './trunk-paths.ts';
import { isBetter, missingMm, trunkValue, type Value } from './trunk-value.ts';
import { trunkWalks } from './trunk-walks.ts';

/** Work left to spend, shared by every search of one problem: one for each trunk valued and each set of tees judged. */
export interface Purse {
  left: number;
}

interface Candidate {
  readonly trunk: Trunk;
  readonly shape: TrunkShape;
  /** never worse than any layout on this trunk */
  readonly value: Value;
}

interface Found extends Candidate {
  readonly plan: TeePlan;
}

/** How many of the best first trunks are worked on, and how many walks through one trunk are tried when limits break. */
const startsKept = 5;
const walksTried = 6;

function* firstTrunks({ ground, paths, targets }: MoveGuide): Generator<Trunk> {
  const ends = targets.filter((place) => ground.problem.places[place]?.end === true);
  for (const from of ends) {
    yield pointTrunk(ground, from);
    for (const to of ends) {
      const path = to <= from ? undefined : paths({ from, to });
      if (path === undefined) continue;
      yield { times: new Uint8Array(ground.ways.length).map((_, way) => (path.includes(way) ? 1 : 0)), home: from };
    }
  }
}

/**
 * Searches the trunks of one grade for the cheapest layout: every cheapest path between two ends and every single place,
 * the best of them bettered by single moves, then the neighbours of the best likewise, until the purse is empty or nothing
 * new is found. Deterministic.
 */
export class TrunkSearch {
  /** least cost, limits apart, of what a limit of this grade may have kept out or made dearer */
  refusedCost = Number.POSITIVE_INFINITY;
  #best: Found | undefined;
  readonly #guide: MoveGuide;
  readonly #purse: Purse;
  /** trunks that a descent has already stood on */
  readonly #stoodOn = new Set<string>();

  constructor(ground: Ground, purse: Purse) {
    const [paths, rings, targets] = [trunkPaths(ground), trunkRings(ground), trunkTargets(ground)];
    this.#guide = { ground, paths, rings, targets };
    this.#purse = purse;
  }

  /** Yields each layout better than the one before it. */
  *run(): Generator<TeePlan> {
    for (const start of this.#ranked(firstTrunks(this.#guide)).slice(0, startsKept)) yield* this.#better(start);
    for (let from = this.#best; from !== undefined && this.#purse.left > 0; ) {
      for (const near of this.#ranked(trunkMoves({ guide: this.#guide, ...from }))) yield* this.#better(near);
      from = this.#best === from ? undefined : this.#best;
    }
  }

  /** Different walkable trunks, best value first. */
  #ranked(trunks: Iterable<Trunk>): readonly Candidate[] {
    const candidates = new Map<string, Candidate>();
    for (const trunk of trunks) {
      const key = trunkKey(trunk);
      if (candidates.has(key)) continue;
      const shape = trunkShape(this.#guide.ground, trunk);
      if (!shape.walkable) continue;
      this.#purse.left -= 1;
      const value = trunkValue({ ground: this.#guide.ground, trunk, shape });
      if (value.violation > 0 && value.violation < missingMm) this.#refuse(value);
      candidates.set(key, { trunk, shape, value });
      if (this.#purse.left <= 0) break;
    }
    return [...candidates.values()].sort((one, other) =>
      isBetter(one.value, other.value) ? -1 : isBetter(other.value, one.value) ? 1 : 0,
    );
  }

  /** Goes from a trunk to the best of its neighbours as long as that is better; yields what beats everything found so far. */
  *#better(start: Candidate): Generator<TeePlan> {
    let here: Found | undefined = this.#laid(start);
    while (here !== undefined) {
      if (this.#best === undefined || isBetter(here.plan.value, this.#best.plan.value)) {
        this.#best = here;
        yield here.plan;
      }
      const key = trunkKey(here.trunk);
      if (this.#stoodOn.has(key) || this.#purse.left <= 0) return;
      this.#stoodOn.add(key);
      here = this.#bestNeighbour(here);
    }
  }

  #bestNeighbour(here: Found): Found | undefined {
    let best = here;
    for (const near of this.#ranked(trunkMoves({ guide: this.#guide, trunk: here.trunk, shape: here.shape }))) {
      if (!isBetter(near.value, best.plan.value)) break;
      const laid = this.#laid(near);
      if (laid !== undefined && isBetter(laid.plan.value, best.plan.value)) best = laid;
    }
    return best === here ? undefined : best;
  }

  /** The best layout on a trunk; more walks than the first are tried only while limits break. */
  #laid(candidate: Candidate): Found | undefined {
    const { ground } = this.#guide;
    let best: TeePlan | undefined;
    let tried = 0;
    const least = candidate.value.violation;
    const spend = (trials: number): void => {
      this.#purse.left -= trials;
    };
    for (const walk of trunkWalks({ ground, trunk: candidate.trunk, shape: candidate.shape })) {
      const plan = placeTees({ ground, walk, least, spend });
      if (plan !== undefined && (best === undefined || isBetter(plan.value, best.value))) best = plan;
      tried += 1;
      if (best?.value.violation === least || tried >= walksTried) break;
    }
    if (best === undefined) return undefined;
    if (isBetter(candidate.value, best.value)) this.#refuse(candidate.value);
    return { ...candidate, plan: best };
  }

  #refuse({ cost }: Value): void {
    this.refusedCost = Math.min(this.refusedCost, cost);
  }
}
