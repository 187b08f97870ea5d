import { shortestRoutes } from '../network/shortest-route.ts';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import type { Problem, ProblemGrade, ProblemPlace, ProblemWay } from './problem.ts';

/** Size of a random boat; devices are spread over all its places. */
export interface BoatSize {
  readonly places: number;
  readonly devices: number;
}

/** Whole numbers below `below`, the same again for the same seed. */
type Dice = (below: number) => number;

const diceFrom = (seed: number): Dice => {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
};

const grades: readonly ProblemGrade[] = [
  aGrade({
    id: 'heavy',
    warnMm: 200_000,
    failMm: 250_000,
    microOhmPerM: 14_200,
    maxMa: 8000,
    trunkPerM: 980,
    dropPerM: 1080,
  }),
  aGrade({ id: 'light', trunkPerM: 420, dropPerM: 480 }),
  aGrade({
    id: 'mid',
    warnMm: 200_000,
    failMm: 250_000,
    microOhmPerM: 14_200,
    maxMa: 4000,
    trunkPerM: 680,
    dropPerM: 750,
  }),
];

const number = (n: number): string => String(n).padStart(2, '0');

interface Shape {
  readonly places: ProblemPlace[];
  readonly ways: ProblemWay[];
}

const anyPlace = (dice: Dice, id: string): ProblemPlace =>
  aPlace(id, { tees: dice(10) < 8, end: dice(10) < 9, spares: 0 });

const anyWay = (
  dice: Dice,
  { id, a, b, leastMm, moreMm }: { id: string; a: string; b: string; leastMm: number; moreMm: number },
): ProblemWay => {
  const mm = leastMm + 50 * dice(moreMm / 50);
  const [first, second] = a < b ? [a, b] : [b, a];
  return aWay({
    id,
    a: first,
    b: second,
    mm,
    maxMm: mm + 50 * dice(6),
    trunk: dice(10) < 2 ? 1 : 2,
    drop: dice(20) > 0,
    extra: dice(10) < 2 ? 500 * (1 + dice(4)) : 0,
  });
};

/** Two runs the length of the boat, ways across at about half the places, and branches off them for the rest. */
const ladder = (dice: Dice, places: number): Shape => {
  const rungs = Math.max(2, Math.round(places * 0.37));
  const shape: Shape = { places: [], ways: [] };
  for (const side of ['port', 'stbd']) {
    for (let n = 0; n < rungs; n += 1) {
      shape.places.push(anyPlace(dice, `${side}-${number(n)}`));
      if (n === 0) continue;
      const ends = { a: `${side}-${number(n - 1)}`, b: `${side}-${number(n)}` };
      shape.ways.push(anyWay(dice, { id: `run-${side}-${number(n)}`, ...ends, leastMm: 500, moreMm: 1200 }));
    }
  }
  for (let n = 0; n < rungs; n += 1) {
    if (n > 0 && n < rungs - 1 && dice(2) === 0) continue;
    const ends = { a: `port-${number(n)}`, b: `stbd-${number(n)}` };
    shape.ways.push(anyWay(dice, { id: `across-${number(n)}`, ...ends, leastMm: 800, moreMm: 3000 }));
  }
  while (shape.places.length < places) {
    const id = `branch-${number(shape.places.length)}`;
    const from = shape.places[dice(shape.places.length)]?.id ?? '';
    shape.ways.push(anyWay(dice, { id: `to-${id}`, a: from, b: id, leastMm: 400, moreMm: 3000 }));
    shape.places.push(anyPlace(dice, id));
  }
  return shape;
};

/**
 * A random boat shaped like a ladder with branches, with three grades of cable at usual prices and every usual limit: LEN
 * 1.9 a device, as the demo boats have on average, and the panel in the middle third. Equal seeds give equal boats.
 */
export const ladderBoat = (seed: number, size: BoatSize): Problem => {
  const dice = diceFrom(seed);
  const { places, ways } = ladder(dice, size.places);
  const hasTeeNear = (place: string): boolean =>
    places.some(({ id, tees }) => tees && id === place) ||
    ways.some(({ a, b, maxMm, drop }) => {
      const other = a === place ? b : b === place ? a : undefined;
      return drop && maxMm <= 4000 && places.some(({ id, tees }) => tees && id === other);
    });
  const served = places.map(({ id }) => id).filter(hasTeeNear);
  const servedPlace = (): string => served[dice(served.length)] ?? '';
  const devices = Array.from({ length: size.devices }, (_, n) =>
    aDevice(`unit-${number(n)}.n2k`, servedPlace(), {
      tailMm: 200 + 100 * dice(8),
      len: [1, 1, 1, 1, 2, 2, 3, 4][dice(8)] ?? 1,
      minMv: [9000, 9000, 9000, 10_000][dice(4)] ?? 9000,
    }),
  );
  const edges = ways.map(({ id, a, b, mm, maxMm }) => ({ id, a, b, mm, longestMm: maxMm }));
  const rungs = places.filter(({ id }) => id.startsWith('port')).length;
  const panel = `port-${number(Math.floor(rungs / 3) + dice(Math.ceil(rungs / 3)))}`;
  const routes = shortestRoutes({ edges, from: panel });
  const reach = places
    .filter(({ tees }) => tees)
    .map(({ id }) => {
      const mm = (routes.get(id)?.mm ?? 0) + 500;
      return { place: id, mm, maxMm: mm + 200 };
    });
  return aProblem({
    places: places.sort((one, other) => (one.id < other.id ? -1 : 1)),
    ways: ways.sort((one, other) => (one.id < other.id ? -1 : 1)),
    devices,
    grades,
    pieces: [500, 1000, 2000, 5000],
    prices: { tee: 2200, terminator: 1600, feed: 3800 },
    feed: { mv: 11_550, lostMv: { warn: 1500, fail: 1670 }, leadPerM: 160, leadMicroOhmPerM: 13_200, reach },
  });
};
