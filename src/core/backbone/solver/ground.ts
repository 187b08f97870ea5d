import { type Route, shortestRoutes } from '../../network/shortest-route.ts';
import type { Problem, ProblemDevice, ProblemGrade } from '../problem.ts';

/** A way the trunk may use; places by their number. Costs in thousandths of a hundredth. */
export interface GroundWay {
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly mm: number;
  readonly maxMm: number;
  readonly extra: number;
  readonly cost: number;
  /** how often the trunk lies there already, and how often it may run there */
  readonly least: number;
  readonly most: number;
}

/** The drop of a device from one place with tees: nominal length, and length as bought for its longest. */
export interface DropOption {
  readonly place: number;
  readonly mm: number;
  readonly boughtMm: number;
  readonly cost: number;
}

/** `options`: those within the limit of one drop first, cheapest first; after them the others, shortest first. */
export interface GroundDevice {
  readonly id: string;
  readonly ma: number;
  readonly minMv: number;
  readonly options: readonly DropOption[];
  /** the same, shortest as bought first */
  readonly shortest: readonly DropOption[];
}

/** Where one device hangs: the step of the walk its tee is at, and its drop from there. */
export interface TeeChoice {
  readonly step: number;
  readonly option: DropOption;
}

/** The feed lead to one place with tees. */
export interface LeadOption {
  readonly place: number;
  readonly cost: number;
  readonly maxMm: number;
}

/** A problem for one grade, within its warn limits or stretched to its fail limits, with everything the search asks for found by number. */
export interface Ground {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly stretched: boolean;
  /** how long trunk and farthest pair may be */
  readonly limitMm: number;
  readonly ways: readonly GroundWay[];
  /** numbers of the ways at each place */
  readonly waysAt: readonly (readonly number[])[];
  readonly devices: readonly GroundDevice[];
  /** places of wanted spares and how many */
  readonly spares: readonly { readonly place: number; readonly count: number }[];
  /** feed leads, cheapest first */
  readonly leads: readonly LeadOption[];
  /** whether the trunk must run through some ways, where it lies already */
  readonly isHeld: boolean;
  /** cost of two terminators, less what the trunk that lies already would cost */
  readonly fixedCost: number;
  readonly teeCost: number;
  readonly feedCost: number;
}

const maPerLen = 50;

/** Lays the ground for a search. Devices no tee can reach keep an empty list of options. */
export const layGround = ({
  problem,
  grade,
  stretched,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly stretched: boolean;
}): Ground => {
  const numbers = new Map(problem.places.map(({ id }, number) => [id, number]));
  const allWays = groundWays({ problem, grade, numbers });
  const ways = allMa(problem) > grade.maxMa ? allWays : usefulWays({ problem, ways: allWays });
  const { prices } = problem;
  const spares = problem.places.flatMap(({ spares: count }, place) => (count > 0 ? [{ place, count }] : []));
  const leads = problem.feed.reach.flatMap(({ place: id, mm, maxMm }): LeadOption[] => {
    const place = numbers.get(id);
    return place === undefined || problem.places[place]?.tees !== true
      ? []
      : [{ place, maxMm, cost: mm * problem.feed.leadPerM }];
  });
  return {
    problem,
    grade,
    stretched,
    limitMm: stretched ? grade.failMm : grade.warnMm,
    ways,
    waysAt: problem.places.map((_, place) =>
      ways.flatMap(({ a, b }, way) => (a === place || b === place ? [way] : [])),
    ),
    devices: groundDevices({ problem, grade, stretched }),
    spares,
    leads: leads.sort((one, other) => one.cost - other.cost || one.place - other.place),
    isHeld: ways.some(({ least }) => least > 0),
    fixedCost: 1000 * 2 * prices.terminator - ways.reduce((sum, { cost, least }) => sum + cost * least, 0),
    teeCost: 1000 * prices.tee,
    feedCost: 1000 * (prices.tee + prices.feed),
  };
};

const groundWays = ({
  problem,
  grade,
  numbers,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly numbers: ReadonlyMap<string, number>;
}): GroundWay[] =>
  problem.ways.flatMap(({ id, a, b, mm, maxMm, trunk, extra }) => {
    const [from, to] = [numbers.get(a), numbers.get(b)];
    const least = (problem.held ?? []).filter(({ via }) => via === id).length;
    const most = Math.max(trunk, least);
    if (most === 0 || from === undefined || to === undefined || from === to) return [];
    return [{ id, a: from, b: to, mm, maxMm, extra, cost: mm * grade.trunkPerM + 1000 * extra, least, most }];
  });

const allMa = ({ devices }: Problem): number => devices.reduce((sum, { len }) => sum + len * maPerLen, 0);

/**
 * The ways without blind ends that no layout gains by: a trunk runs into a place with one way only for a tee there, or to
 * end there because it may not end one place before. Not so where one leg cannot carry all: then a turn into a blind end
 * and back may be cheap, for it parts tees at one place into two legs.
 */
const usefulWays = ({
  problem,
  ways,
}: {
  readonly problem: Problem;
  readonly ways: readonly GroundWay[];
}): readonly GroundWay[] => {
  const waysAt = new Map<number, number>();
  for (const place of ways.flatMap(({ a, b }) => [a, b])) waysAt.set(place, (waysAt.get(place) ?? 0) + 1);
  const isBlind = (place: number, before: number): boolean => {
    const own = problem.places[place];
    if (own === undefined || own.tees || (waysAt.get(place) ?? 0) > 1) return false;
    return !own.end || problem.places[before]?.end === true;
  };
  const useful = ways.filter(({ a, b, least }) => least > 0 || (!isBlind(a, b) && !isBlind(b, a)));
  return useful.length === ways.length ? ways : usefulWays({ problem, ways: useful });
};

/** The least volts at any device that the limit on lost volts leaves. */
const leastMv = ({ feed }: Problem, stretched: boolean): number =>
  feed.lostMv === undefined ? 0 : feed.mv - (stretched ? feed.lostMv.fail : feed.lostMv.warn);

const groundDevices = ({
  problem,
  grade,
  stretched,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  readonly stretched: boolean;
}): GroundDevice[] => {
  const edges = problem.ways
    .filter(({ drop }) => drop)
    .map(({ id, a, b, mm, maxMm }) => ({ id, a, b, mm, longestMm: maxMm }));
  const maxMmOf = new Map(problem.ways.map(({ id, maxMm }) => [id, maxMm]));
  const routesFrom = new Map<string, ReadonlyMap<string, Route>>();
  const pieces = [...problem.pieces].sort((one, other) => one - other);
  return problem.devices.map((device) => {
    const routes = routesFrom.get(device.place) ?? shortestRoutes({ edges, from: device.place });
    routesFrom.set(device.place, routes);
    const options = problem.places.flatMap(({ id, tees }, place): DropOption[] => {
      const route = tees ? routes.get(id) : undefined;
      if (route === undefined) return [];
      const longestMm = route.edges.reduce((sum, edge) => sum + (maxMmOf.get(edge) ?? 0), device.maxTailMm);
      const mm = route.mm + device.tailMm;
      const boughtMm = pieces.find((piece) => piece >= longestMm) ?? longestMm;
      return [{ place, mm, boughtMm, cost: mm * grade.dropPerM }];
    });
    const minMv = Math.max(device.minMv, leastMv(problem, stretched));
    return groundDevice({ device: { ...device, minMv }, options, dropMm: problem.limits.dropMm });
  });
};

const groundDevice = ({
  device,
  options,
  dropMm,
}: {
  readonly device: ProblemDevice;
  readonly options: readonly DropOption[];
  readonly dropMm: number;
}): GroundDevice => {
  const fits = options.filter(({ boughtMm }) => boughtMm <= dropMm);
  const others = options.filter(({ boughtMm }) => boughtMm > dropMm).sort(byBought);
  fits.sort((one, other) => one.mm - other.mm || one.boughtMm - other.boughtMm || one.place - other.place);
  return {
    id: device.id,
    ma: device.len * maPerLen,
    minMv: device.minMv,
    options: [...fits, ...others],
    shortest: [...options].sort(byBought),
  };
};

const byBought = (one: DropOption, other: DropOption): number =>
  one.boughtMm - other.boughtMm || one.mm - other.mm || one.place - other.place;
