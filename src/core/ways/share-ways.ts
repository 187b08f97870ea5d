import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { fillVerdict } from '../facts/cable-work.ts';
import { hardPull } from '../facts/route-penalties.ts';
import { type RouteEdge, shortestRoutes } from '../network/shortest-route.ts';
import type { BusEntry, LineEntry } from '../plan-shape.ts';
import { costEdges, type Router } from './routes.ts';
import { hourMm } from './way-cost.ts';
import { addedByWay, type DrawnCable, drawnCable, keptByWay } from './way-fills.ts';
import { type WayLength, wayLengths } from './way-lengths.ts';

/** Most route searches that agreeing on the ways may take; it counts work, never time. */
const searchBudget = 600;
const mostRounds = 12;

type BusGrade = Pick<BusEntry, 'id' | 'grade'>;

interface Load {
  readonly boreMm: number;
  /** sum of squared diameters of what does not move: cables that stay, trunk and drops */
  readonly fixed: number;
  moving: number;
  count: number;
  /** what leading a line here has come to cost, for lines could not agree, mm */
  pressureMm: number;
}

interface Moving {
  readonly line: LineEntry;
  readonly square: number;
  readonly from: string;
  readonly to: string;
  /** its route if it were alone aboard */
  readonly own: readonly string[];
  ways: readonly string[];
}

interface Standing {
  readonly overPct: number;
  readonly costMm: number;
}

/**
 * Routes of new lines that share pipes, by line id, where the cheapest route of each alone would overfill one. All lines
 * through a pipe above its fill look for another way in turn, the pipe growing dearer each round, until none is overfull or
 * the budget is spent; the best agreement seen counts. First what cannot go in is least, then cable, penalties and hours.
 * Empty where nothing is overfull. Trunk and drops of a bus do not move.
 */
export const shareWays = ({
  index,
  lines,
  buses,
  settled = new Map(),
}: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly BusGrade[];
  /** lines, by id, that go where they go for another reason */
  readonly settled?: ReadonlyMap<string, unknown>;
}): ReadonlyMap<string, readonly string[]> => {
  const added = addedByWay({ index, lines, buses });
  if (!isAnyOver(index, added)) return new Map();
  const movers = moversOf(
    lines.filter(({ id }) => !settled.has(id)),
    buses,
  );
  const talks = new Talks({ index, movers, added });
  let best = talks.standing(movers);
  let routes = routesOf(movers);
  for (let round = 0; round < mostRounds && talks.searches < searchBudget; round += 1) {
    if (!talks.round(movers)) break;
    const now = talks.standing(movers);
    if (!isBetter(now, best)) continue;
    best = now;
    routes = routesOf(movers);
  }
  talks.takeUp(movers, routes);
  talks.goBack(movers, best);
  return routesOf(movers);
};

/** A router that leads the lines that agreed on their ways by those, and every other as before. */
export const routerWith = (router: Router, agreed: ReadonlyMap<string, readonly string[]>): Router => ({
  ...router,
  cheapest: (ask) => {
    const ways = ask.line === undefined ? undefined : agreed.get(ask.line);
    return (ways === undefined ? undefined : router.along({ from: ask.from, ways })) ?? router.cheapest(ask);
  },
});

const isBetter = (one: Standing, other: Standing): boolean =>
  one.overPct < other.overPct || (one.overPct === other.overPct && one.costMm < other.costMm);

const routesOf = (movers: readonly Moving[]): ReadonlyMap<string, readonly string[]> =>
  new Map(movers.map(({ line, ways }) => [line.id, ways]));

const isAnyOver = (index: BoatIndex, added: ReadonlyMap<string, readonly DrawnCable[]>): boolean => {
  const kept = keptByWay(index);
  return index.boat.ways.some(({ id, bore }) => {
    const drawn = added.get(id);
    if (bore === undefined || drawn === undefined) return false;
    const fixed = squares([
      ...(kept.get(id) ?? []).map(({ diameterMm }) => diameterMm),
      ...drawn.map(({ outsideMm }) => outsideMm),
    ]);
    return fillPct({ boreMm: bore.mm, fixed, moving: 0 }) > fillVerdict.doubtAbovePct;
  });
};

const squares = (diametersMm: readonly number[]): number => diametersMm.reduce((sum, mm) => sum + mm ** 2, 0);

/** The new lines that may go another way, by id: all but those of a bus. */
const moversOf = (lines: readonly LineEntry[], buses: readonly BusGrade[]): readonly Moving[] => {
  const busIds = new Set(buses.map(({ id }) => id));
  return [...lines]
    .sort((one, other) => byCodeUnit(one.id, other.id))
    .flatMap((line): Moving[] => {
      const [from, to] = [line.places.at(0), line.places.at(-1)];
      const isOfBus = line.kind === 'trunk' || busIds.has(line.from) || busIds.has(line.to);
      if (line.kept !== undefined || line.pinned !== undefined || isOfBus || from === undefined || to === undefined)
        return [];
      return [{ line, square: drawnCable(line, buses).outsideMm ** 2, from, to, own: line.ways, ways: line.ways }];
    });
};

class Talks {
  readonly #index: BoatIndex;
  readonly #lengths: ReadonlyMap<string, WayLength>;
  readonly #loads = new Map<string, Load>();
  readonly #edges = new Map<LineKind, readonly RouteEdge[]>();
  readonly #costs = new Map<LineKind, ReadonlyMap<string, number>>();
  readonly #hardPullMm: number;
  searches = 0;

  constructor({
    index,
    movers,
    added,
  }: {
    readonly index: BoatIndex;
    readonly movers: readonly Moving[];
    readonly added: ReadonlyMap<string, readonly DrawnCable[]>;
  }) {
    this.#index = index;
    this.#lengths = wayLengths({ ways: index.boat.ways, places: index.places });
    this.#hardPullMm = Math.round(hardPull.value * hourMm(index));
    const kept = keptByWay(index);
    const moving = new Set(movers.map(({ line }) => line.id));
    for (const { id, bore } of index.boat.ways) {
      if (bore === undefined) continue;
      const still = (added.get(id) ?? []).filter((cable) => !moving.has(cable.id));
      const fixedMm = [
        ...(kept.get(id) ?? []).map(({ diameterMm }) => diameterMm),
        ...still.map(({ outsideMm }) => outsideMm),
      ];
      const fixed = squares(fixedMm);
      this.#loads.set(id, { boreMm: bore.mm, fixed, moving: 0, count: still.length, pressureMm: 0 });
    }
    for (const mover of movers) this.#put(mover, 1);
  }

  /** One round: whoever runs through a pipe above its fill looks again; says whether anything is left to agree on. */
  round(movers: readonly Moving[]): boolean {
    const over = (): ReadonlySet<string> =>
      new Set([...this.#loads].flatMap(([id, load]) => (isOver(load) ? [id] : [])));
    const crowded = over();
    if (crowded.size === 0) return false;
    for (const id of crowded) this.#press(id);
    for (const mover of movers) {
      if (this.searches >= searchBudget || !mover.ways.some((way) => crowded.has(way))) continue;
      this.#put(mover, -1);
      const ways = this.#search(mover) ?? mover.ways;
      mover.ways = sameWays(ways, mover.own) ? mover.own : ways;
      this.#put(mover, 1);
    }
    return true;
  }

  takeUp(movers: readonly Moving[], routes: ReadonlyMap<string, readonly string[]>): void {
    for (const mover of movers) this.#lead(mover, routes.get(mover.line.id) ?? mover.ways);
  }

  /** Who gave way for nothing, for others did as well, goes back to its own route. */
  goBack(movers: readonly Moving[], standing: Standing): void {
    let best = standing;
    for (const mover of movers.filter(({ ways, own }) => ways !== own)) {
      const agreed = mover.ways;
      this.#lead(mover, mover.own);
      const now = this.standing(movers);
      if (isBetter(now, best)) best = now;
      else this.#lead(mover, agreed);
    }
  }

  standing(movers: readonly Moving[]): Standing {
    let overPct = 0;
    let costMm = 0;
    for (const load of this.#loads.values()) {
      if (load.count === 0) continue;
      overPct += Math.max(0, fillPct(load) - fillVerdict.refuseAbovePct);
      if (isOver(load)) costMm += this.#hardPullMm;
    }
    for (const { line, ways } of movers) {
      const costs = this.#costsOf(line.kind);
      for (const way of ways) costMm += costs.get(way) ?? 0;
    }
    return { overPct: Math.round(overPct * 1e6), costMm };
  }

  #lead(mover: Moving, ways: readonly string[]): void {
    this.#put(mover, -1);
    mover.ways = ways;
    this.#put(mover, 1);
  }

  #press(id: string): void {
    const load = this.#loads.get(id);
    if (load !== undefined) load.pressureMm += Math.round(this.#hardPullMm / Math.max(1, load.count));
  }

  #put({ ways, square }: Moving, sign: 1 | -1): void {
    for (const way of ways) {
      const load = this.#loads.get(way);
      if (load === undefined) continue;
      load.moving += sign * square;
      load.count += sign;
    }
  }

  #edgesOf(kind: LineKind): readonly RouteEdge[] {
    const known = this.#edges.get(kind) ?? costEdges({ index: this.#index, lengths: this.#lengths, kind });
    this.#edges.set(kind, known);
    return known;
  }

  #costsOf(kind: LineKind): ReadonlyMap<string, number> {
    const known = this.#costs.get(kind) ?? new Map(this.#edgesOf(kind).map(({ id, mm }) => [id, mm]));
    this.#costs.set(kind, known);
    return known;
  }

  #search({ line, square, from, to }: Moving): readonly string[] | undefined {
    this.searches += 1;
    const edges = this.#edgesOf(line.kind).map((edge) => {
      const load = this.#loads.get(edge.id);
      return load === undefined ? edge : { ...edge, mm: edge.mm + this.#crowdingMm(load, square) };
    });
    return shortestRoutes({ edges, from }).get(to)?.edges;
  }

  /** What one more line costs here: the pressure of earlier rounds, and its part of a hard pull, or of what will not go in. */
  #crowdingMm(load: Load, square: number): number {
    const pct = fillPct({ ...load, moving: load.moving + square });
    if (pct <= fillVerdict.doubtAbovePct) return load.pressureMm;
    const shareMm = Math.round(this.#hardPullMm / (load.count + 1));
    return load.pressureMm + (pct > fillVerdict.refuseAbovePct ? 10 * this.#hardPullMm : shareMm);
  }
}

const fillPct = ({ boreMm, fixed, moving }: Pick<Load, 'boreMm' | 'fixed' | 'moving'>): number =>
  (100 * (fixed + moving)) / boreMm ** 2;

const isOver = (load: Load): boolean => load.count > 0 && fillPct(load) > fillVerdict.doubtAbovePct;

const sameWays = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((way, n) => way === other[n]);
