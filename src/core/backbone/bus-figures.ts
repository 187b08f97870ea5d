import { byCodeUnit } from '../boat/ids.ts';
import { lenCurrent } from '../facts/bus-limits.ts';
import type { BusEntry } from '../plan-shape.ts';
import { type BusDrop, busDrops } from './bus-drops.ts';
import { type BusLeg, busLegs, deviceVolts, type FedBus, thumbDropV } from './bus-volts.ts';
import { effectiveLength } from './effective-length.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';

/** Everything measured on one laid-out bus. `legs` is empty where nothing feeds it. */
export interface BusFigures {
  readonly entry: Omit<BusEntry, 'traffic' | 'layout'>;
  readonly legs: readonly BusLeg[];
}

/**
 * The figures of a bus from its layout: lengths in metres, nominal and with every doubt against them, drops on the piece
 * bought, LEN, and volts at each device with the bank at its lowest. Nothing is rounded. The walk must hang together over
 * ways of the problem; anything else that is wrong with the layout is only measured.
 */
export const busFigures = (problem: Problem, layout: Layout): BusFigures => {
  const { walk } = layout;
  const drops = busDrops(problem, walk);
  const atMm = positionsMm(problem, walk, 'maxMm');
  const trunkMm = atMm.at(-1) ?? 0;
  const reached = drops.flatMap(({ port, step, cable }) => (cable === undefined ? [] : [{ port, step, ...cable }]));
  const tees = reached.map(({ step, boughtMm }) => ({ atMm: atMm[step] ?? 0, dropMm: boughtMm }));
  const bus = fedBus(problem, layout);
  const feedStep = walk.find(({ tees }) => tees.includes('feed'));
  return {
    entry: {
      id: problem.bus,
      protocol: 'nmea2000',
      grade: layout.grade,
      lengthM: (positionsMm(problem, walk, 'mm').at(-1) ?? 0) / 1000,
      longestM: trunkMm / 1000,
      longestDropM: Math.max(0, ...tees.map(({ dropMm }) => dropMm)) / 1000,
      dropsM: tees.reduce((sumMm, { dropMm }) => sumMm + dropMm, 0) / 1000,
      drops: reached
        .map(({ port, mm, boughtMm }) => ({ port, lengthM: mm / 1000, boughtM: boughtMm / 1000 }))
        .sort((one, other) => byCodeUnit(one.port, other.port)),
      farthestM: effectiveLength({ trunkMm, tees }) / 1000,
      devices: drops.length,
      len: drops.reduce((sum, drop) => sum + drop.len, 0),
      ...(feedStep === undefined ? {} : { feedPlace: feedStep.place }),
      ends: [walk[0]?.place ?? '', walk.at(-1)?.place ?? ''],
      walk: walk.map(({ tees, ...step }) => ({ ...step, tees: [...tees] })),
      along: alongTrunk(problem, walk, drops),
      ...heldAgainst(problem, layout),
      ...(bus === undefined ? { volts: [] } : voltsOf(bus)),
    },
    legs: bus === undefined ? [] : busLegs(bus),
  };
};

/** Distance of every step from the start of the walk, along the cable; a place passed twice has two. */
const positionsMm = (problem: Problem, walk: readonly LayoutStep[], length: 'mm' | 'maxMm'): readonly number[] => {
  const ways = new Map(problem.ways.map((way) => [way.id, way[length]]));
  let atMm = 0;
  return walk.map(({ via }) => {
    const wayMm = via === undefined ? 0 : ways.get(via);
    if (wayMm === undefined) throw new Error(`The walk of ${problem.bus} goes through ${via}, no way of its problem.`);
    atMm += wayMm;
    return atMm;
  });
};

/** A stretch carries what hangs on its far side as seen from the feed. */
const alongTrunk = (
  problem: Problem,
  walk: readonly LayoutStep[],
  drops: readonly BusDrop[],
): NonNullable<BusEntry['along']> => {
  const feed = walk.findIndex(({ tees }) => tees.includes('feed'));
  const lenOf = (isBeyond: (step: number) => boolean): number =>
    drops.reduce((sum, drop) => (isBeyond(drop.step) ? sum + drop.len : sum), 0);
  return positionsMm(problem, walk, 'mm').map((mm, at) => ({
    alongM: mm / 1000,
    ...(at === 0 || feed < 0 ? {} : { carriesLen: lenOf((step) => (at <= feed ? step < at : step >= at)) }),
  }));
};

const heldAgainst = (problem: Problem, layout: Layout): Pick<BusEntry, 'held'> => {
  if (problem.devices.length === 0) return {};
  const grade = problem.grades.find(({ id }) => id === layout.grade);
  const { lostMv } = problem.feed;
  return {
    held: {
      leastV: Math.max(...problem.devices.map(({ minMv }) => minMv)) / 1000,
      ...(lostMv === undefined ? {} : { lostV: lostMv.fail / 1000 }),
      ...(grade === undefined ? {} : { legLen: Math.floor(grade.maxMa / lenCurrent.value) }),
    },
  };
};

/** A bus at its longest with its feed; absent where nothing feeds it. */
export const fedBus = (problem: Problem, layout: Layout): FedBus | undefined => {
  const step = layout.walk.findIndex(({ tees }) => tees.includes('feed'));
  const reach = problem.feed.reach.find(({ place }) => place === layout.walk[step]?.place);
  const grade = problem.grades.find(({ id }) => id === layout.grade);
  if (reach === undefined || grade === undefined) return undefined;
  return {
    atMm: positionsMm(problem, layout.walk, 'maxMm'),
    drops: busDrops(problem, layout.walk),
    feed: { step, leadMm: reach.maxMm },
    supplyMv: problem.feed.mv,
    microOhmPerM: grade.microOhmPerM,
    leadMicroOhmPerM: problem.feed.leadMicroOhmPerM,
  };
};

const voltsOf = (bus: FedBus): Pick<BusEntry, 'supplyV' | 'volts' | 'thumbDropV'> => {
  const supplyV = bus.supplyMv / 1000;
  const volts = deviceVolts(bus)
    .map(({ port, volts: lowestV }) => ({ port, lowestV, dropV: supplyV - lowestV }))
    .sort((one, other) => byCodeUnit(one.port, other.port));
  return { supplyV, volts, thumbDropV: thumbDropV(bus) };
};
