import { byCodeUnit } from '../boat/ids.ts';
import type { Layout, Problem, ProblemGrade } from './problem.ts';

/** The cheapest layout of a tiny boat, found by trying everything. */
export interface BruteLayout {
  readonly cost: number;
  readonly grade: string;
}

interface Step {
  readonly place: string;
  readonly mm: number;
  /** the way it was come by */
  readonly way?: number;
}

interface Length {
  readonly mm: number;
  readonly longestMm: number;
}

const far: Length = { mm: Number.POSITIVE_INFINITY, longestMm: Number.POSITIVE_INFINITY };

/** Lengths between all places over ways that take drops: least nominal length, then least longest. */
const dropLengths = (problem: Problem): ((from: string, to: string) => Length) => {
  const known = new Map<string, Length>();
  const get = (from: string, to: string): Length => known.get(`${from} ${to}`) ?? far;
  const offer = (from: string, to: string, length: Length): void => {
    const now = get(from, to);
    if (length.mm < now.mm || (length.mm === now.mm && length.longestMm < now.longestMm)) {
      known.set(`${from} ${to}`, length);
    }
  };
  for (const { id } of problem.places) offer(id, id, { mm: 0, longestMm: 0 });
  for (const { a, b, mm, maxMm, drop } of problem.ways) {
    if (drop) offer(a, b, { mm, longestMm: maxMm });
    if (drop) offer(b, a, { mm, longestMm: maxMm });
  }
  for (const { id: middle } of problem.places) {
    for (const { id: from } of problem.places) {
      for (const { id: to } of problem.places) {
        const [one, other] = [get(from, middle), get(middle, to)];
        offer(from, to, { mm: one.mm + other.mm, longestMm: one.longestMm + other.longestMm });
      }
    }
  }
  return get;
};

/** Every choice of how often the trunk runs through each way, at least as often as it lies there already. */
function* everyTimes(least: readonly number[], most: readonly number[]): Generator<readonly number[]> {
  const [first, ...rest] = most;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const others of everyTimes(least.slice(1), rest)) {
    for (let n = least[0] ?? 0; n <= first; n += 1) yield [n, ...others];
  }
}

/** How often trunk that is kept lies in each way. */
const heldTimes = ({ ways, held = [] }: Problem): readonly number[] =>
  ways.map(({ id }) => held.filter(({ via }) => via === id).length);

/** Every walk from a place that uses up all the ways. */
function* everyWalk(problem: Problem, left: readonly number[], steps: readonly Step[]): Generator<readonly Step[]> {
  const here = steps.at(-1);
  if (here === undefined) return;
  if (left.every((n) => n === 0)) yield steps;
  for (const [way, { a, b, maxMm }] of problem.ways.entries()) {
    const n = left[way] ?? 0;
    if (n === 0 || (a !== here.place && b !== here.place)) continue;
    const place = a === here.place ? b : a;
    yield* everyWalk(problem, left.with(way, n - 1), [...steps, { place, mm: here.mm + maxMm, way }]);
  }
}

/** Whether one walk can use every way that often: at most two odd places, and none of this tells whether it hangs together. */
const mayBeOneWalk = (problem: Problem, times: readonly number[]): boolean => {
  const degree = new Map<string, number>();
  for (const [way, n] of times.entries()) {
    for (const end of [problem.ways[way]?.a ?? '', problem.ways[way]?.b ?? '']) {
      degree.set(end, (degree.get(end) ?? 0) + n);
    }
  }
  return [...degree.values()].filter((n) => n % 2 === 1).length <= 2;
};

interface Hung {
  readonly x: number;
  readonly boughtMm: number;
  readonly ma: number;
  readonly minMv: number;
  readonly step: number;
}

interface Limits {
  readonly lengthMm: number;
  readonly lostMv: number;
}

const volts = (
  problem: Problem,
  grade: ProblemGrade,
  limits: Limits,
  hung: readonly Hung[],
  feed: Step & { at: number },
): boolean => {
  const reach = problem.feed.reach.find(({ place }) => place === feed.place);
  if (reach === undefined) return false;
  const sum = (list: readonly Hung[]): number => list.reduce((ma, next) => ma + next.ma, 0);
  if (sum(hung.filter(({ step }) => step >= feed.at)) > grade.maxMa) return false;
  if (sum(hung.filter(({ step }) => step <= feed.at)) > grade.maxMa) return false;
  return hung.every((device) => {
    let lost = problem.feed.leadMicroOhmPerM * reach.maxMm * sum(hung);
    lost += grade.microOhmPerM * device.boughtMm * device.ma;
    for (const other of hung) {
      const sameSide = Math.sign(device.x - feed.mm) === Math.sign(other.x - feed.mm);
      const shared = sameSide ? Math.min(Math.abs(device.x - feed.mm), Math.abs(other.x - feed.mm)) : 0;
      lost += grade.microOhmPerM * shared * other.ma;
    }
    return problem.feed.mv - (2 * lost) / 1e9 >= device.minMv && (2 * lost) / 1e9 <= limits.lostMv;
  });
};

const farthest = (trunkMm: number, hung: readonly Hung[]): number => {
  const points = [{ x: 0, boughtMm: 0 }, { x: trunkMm, boughtMm: 0 }, ...hung];
  let most = 0;
  for (const [n, one] of points.entries()) {
    for (const other of points.slice(n + 1)) {
      most = Math.max(most, Math.abs(one.x - other.x) + one.boughtMm + other.boughtMm);
    }
  }
  return most;
};

/** The drop of a device from one place, within the limit of one drop. */
interface BruteDrop {
  readonly cost: number;
  readonly boughtMm: number;
}

/** For each device its drop from every place that may have its tee. */
const dropTable = (problem: Problem, grade: ProblemGrade): ReadonlyMap<string, BruteDrop>[] => {
  const drop = dropLengths(problem);
  return problem.devices.map((device) => {
    const table = new Map<string, BruteDrop>();
    for (const { id, tees } of problem.places) {
      const route = drop(id, device.place);
      const longestMm = route.longestMm + device.maxTailMm;
      const piece = Math.min(...problem.pieces.filter((entry) => entry >= longestMm));
      const boughtMm = Number.isFinite(piece) ? piece : longestMm;
      if (!tees || boughtMm > problem.limits.dropMm) continue;
      table.set(id, { cost: (route.mm + device.tailMm) * grade.dropPerM + 1000 * problem.prices.tee, boughtMm });
    }
    return table;
  });
};

interface Boat {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly limits: Limits;
  readonly drops: readonly ReadonlyMap<string, BruteDrop>[];
  /** the least that the devices from each one on cost, wherever they hang */
  readonly leastAfter: readonly number[];
}

/** Told of every layout as cheap as the cheapest so far. */
type OnLayout = (layout: {
  readonly cost: number;
  readonly hung: readonly Hung[];
  readonly walk: readonly Step[];
}) => void;

/**
 * The least cost on one walk below `under`, over every tee of every device and every place of the feed; with `onLayout`
 * those that cost the same are looked at too.
 */
const cheapestOnWalk = (
  boat: Boat,
  walk: readonly Step[],
  trunkCost: number,
  under: number,
  onLayout?: OnLayout,
): number => {
  const { problem, grade, limits, drops, leastAfter } = boat;
  let best = under;
  const isNoUse = (cost: number): boolean => (onLayout === undefined ? cost >= best : cost > best);
  const feedAt = (hung: readonly Hung[], cost: number): void => {
    if (hung.reduce((sum, { boughtMm }) => sum + boughtMm, 0) > problem.limits.dropsMm) return;
    if (farthest(walk.at(-1)?.mm ?? 0, hung) > limits.lengthMm) return;
    for (const [at, step] of walk.entries()) {
      const reach = problem.feed.reach.find((entry) => entry.place === step.place);
      const tees = problem.places.find(({ id }) => id === step.place)?.tees;
      if (tees !== true || reach === undefined) continue;
      const fed = cost + 1000 * (problem.prices.tee + problem.prices.feed) + reach.mm * problem.feed.leadPerM;
      if (isNoUse(fed) || !volts(problem, grade, limits, hung, { ...step, at })) continue;
      best = fed;
      onLayout?.({ cost: fed, hung, walk });
    }
  };
  const hang = (hung: readonly Hung[], cost: number): void => {
    if (isNoUse(cost + (leastAfter[hung.length] ?? 0))) return;
    const device = problem.devices[hung.length];
    if (device === undefined) {
      feedAt(hung, cost);
      return;
    }
    for (const [step, { place, mm: x }] of walk.entries()) {
      const drop = drops[hung.length]?.get(place);
      if (drop === undefined) continue;
      const own = { x, step, boughtMm: drop.boughtMm, ma: device.len * 50, minMv: device.minMv };
      hang([...hung, own], cost + drop.cost);
    }
  };
  hang([], trunkCost);
  return best;
};

/** Every trunk that may be one walk, by how often it runs through each way, cheapest first. */
const everyTrunk = (problem: Problem, grade: ProblemGrade, most: readonly number[]) =>
  [...everyTimes(heldTimes(problem), most)]
    .filter((times) => mayBeOneWalk(problem, times))
    .map((times) => {
      let cost = 2000 * problem.prices.terminator;
      for (const [way, n] of times.entries()) {
        const bought = n - (heldTimes(problem)[way] ?? 0);
        cost += bought * ((problem.ways[way]?.mm ?? 0) * grade.trunkPerM + 1000 * (problem.ways[way]?.extra ?? 0));
      }
      return { times, cost };
    })
    .sort((one, other) => one.cost - other.cost);

const cheapestOfGrade = ({
  problem,
  grade,
  limits,
  most,
  onLayout,
}: {
  problem: Problem;
  grade: ProblemGrade;
  limits: Limits;
  most: readonly number[];
  onLayout?: OnLayout | undefined;
}): number => {
  const drops = dropTable(problem, grade);
  const least = drops.map((table) => Math.min(...[...table.values()].map(({ cost }) => cost)));
  const leastAfter = [...drops, undefined].map((_, n) => least.slice(n).reduce((sum, cost) => sum + cost, 0));
  const boat = { problem, grade, limits, drops, leastAfter };
  const ends = problem.places.filter(({ end }) => end).map(({ id }) => id);
  const spares = problem.places.filter((entry) => entry.spares > 0);
  const spareCost = spares.reduce((sum, entry) => sum + entry.spares * 1000 * problem.prices.tee, 0);
  let best = Number.POSITIVE_INFINITY;
  for (const { times, cost } of everyTrunk(problem, grade, most)) {
    const leastCost = cost + spareCost + (leastAfter[0] ?? 0);
    if (onLayout === undefined ? leastCost >= best : leastCost > best) break;
    for (const start of ends) {
      for (const walk of everyWalk(problem, times, [{ place: start, mm: 0 }])) {
        const last = walk.at(-1)?.place ?? '';
        const passes = new Set(walk.map(({ place }) => place));
        if (!ends.includes(last) || last < start || !spares.every(({ id }) => passes.has(id))) continue;
        best = cheapestOnWalk(boat, walk, cost + spareCost, best, onLayout);
      }
    }
  }
  return best;
};

/**
 * The cheapest layout by trying every number of times the trunk runs through each way, every walk up to reversal, every
 * start of a closed walk, every tee within reach and every place of the feed, as the layout problem is worded; nothing when
 * none holds. Only for boats of a handful of ways. `timesMore` lets the trunk through open ways more often than it may.
 */
export const bruteLayout = (problem: Problem, { timesMore = 0 } = {}): BruteLayout | undefined => {
  const held = heldTimes(problem);
  const most = problem.ways.map(({ trunk }, way) => Math.max(held[way] ?? 0, trunk === 2 ? trunk + timesMore : trunk));
  if (problem.devices.length > problem.limits.devices) return undefined;
  for (const limit of ['warn', 'fail'] as const) {
    const lostMv = problem.feed.lostMv?.[limit] ?? Number.POSITIVE_INFINITY;
    const found = problem.grades
      .map((grade) => ({
        grade: grade.id,
        cost: cheapestOfGrade({ problem, grade, limits: { lengthMm: grade[`${limit}Mm`], lostMv }, most }),
      }))
      .sort((one, other) => one.cost - other.cost)[0];
    if (found !== undefined && Number.isFinite(found.cost)) return found;
  }
  return undefined;
};

/** What is looked at where layouts cost the same, in this order; the lesser comes first. */
export interface BruteRank {
  readonly trunkMm: number;
  readonly longDrops: number;
  readonly teePlaces: readonly string[];
  readonly times: readonly number[];
  /** places and ways of the walk, as text, in the direction whose text comes first */
  readonly walk: string;
}

const rankOf = ({ ways }: Problem, walk: readonly Step[], hung: readonly Hung[]): BruteRank => {
  const used = walk.flatMap(({ way }) => (way === undefined ? [] : [way]));
  const [places, names] = [walk.map(({ place }) => place), used.map((way) => ways[way]?.id ?? '')];
  const [forth, back] = [JSON.stringify([places, names]), JSON.stringify([places.toReversed(), names.toReversed()])];
  return {
    trunkMm: used.reduce((sum, way) => sum + (ways[way]?.mm ?? 0), 0),
    longDrops: hung.filter(({ boughtMm }) => boughtMm > 3000).length,
    teePlaces: hung.map(({ step }) => walk[step]?.place ?? ''),
    times: ways.map((_, way) => used.filter((one) => one === way).length),
    walk: [forth, back].sort(byCodeUnit)[0] ?? '',
  };
};

const inRank = (one: BruteRank, other: BruteRank): number => {
  const flat = (rank: BruteRank) => [rank.trunkMm, rank.longDrops, ...rank.teePlaces, ...rank.times, rank.walk];
  const [first, second] = [flat(one), flat(other)];
  const at = first.findIndex((value, n) => value !== second[n]);
  return at < 0 ? 0 : (first[at] ?? 0) < (second[at] ?? 0) ? -1 : 1;
};

/** The rank of the first among all the cheapest layouts within the warn limits of one grade; nothing when none holds. */
export const bruteFirst = (problem: Problem): BruteRank | undefined => {
  const [grade] = problem.grades;
  if (grade === undefined || problem.devices.length > problem.limits.devices) return undefined;
  let cheapest = Number.POSITIVE_INFINITY;
  let first: BruteRank | undefined;
  const onLayout: OnLayout = ({ cost, hung, walk }) => {
    const rank = rankOf(problem, walk, hung);
    if (first === undefined || cost < cheapest || inRank(rank, first) < 0) first = rank;
    cheapest = cost;
  };
  const limits = { lengthMm: grade.warnMm, lostMv: problem.feed.lostMv?.warn ?? Number.POSITIVE_INFINITY };
  cheapestOfGrade({ problem, grade, limits, most: problem.ways.map(({ trunk }) => trunk), onLayout });
  return first;
};

/** The rank a layout of a problem has. */
export const bruteRankOf = (problem: Problem, layout: Layout): BruteRank => {
  const walk = layout.walk.map(({ place, via }): Step => {
    const way = problem.ways.findIndex(({ id }) => id === via);
    return { place, mm: 0, ...(way < 0 ? {} : { way }) };
  });
  const tables = problem.grades.flatMap((grade) => (grade.id === layout.grade ? [dropTable(problem, grade)] : []));
  const hung = problem.devices.map(({ id }, device): Hung => {
    const step = layout.walk.findIndex(({ tees }) => tees.includes(id));
    const boughtMm = tables[0]?.[device]?.get(layout.walk[step]?.place ?? '')?.boughtMm ?? 0;
    return { x: 0, ma: 0, minMv: 0, boughtMm, step };
  });
  return rankOf(problem, walk, hung);
};
