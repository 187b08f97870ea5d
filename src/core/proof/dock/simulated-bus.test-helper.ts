import { solveDc } from '../../network/dc-solve.ts';
import type { BusModel } from './bus-model.ts';
import { between, logBetween, type Random, whole } from './random.test-helper.ts';
import { Resistors } from './resistor-network.test-helper.ts';

// A bus made of resistors, to plant faults in. It shares nothing with what the diagnosis expects: the data wires, the minus, the
// plus and the shield are nodes of one network solved by elimination, the current of the bus goes through the solver of direct
// current, and a hand meter with leads and an error of its own reads both.

/** One fault, as it is planted. */
export interface Planted {
  readonly fault: string;
  readonly step: number;
  readonly end: 0 | 1;
  readonly ohm: number;
  readonly lostV: number;
  readonly wire: 'high' | 'low';
  readonly to: 'minus' | 'plus';
  readonly stuck: boolean;
}

/** The boat as she really is, beside the model of her that the plan has. */
export interface RealBus {
  readonly model: BusModel;
  readonly lengthsM: readonly number[];
  readonly dataOhmPerM: number;
  readonly powerOhmPerM: number;
  readonly terminatorOhm: readonly [number, number, number];
  readonly nodeOhm: readonly number[];
  readonly feedV: number;
  readonly drawnA: number;
}

/** A bus of three to nine steps with three to twenty devices, on one of three cables, its lengths not quite as entered. */
export const aRealBus = (random: Random): RealBus => {
  const steps = whole(random, 3, 9);
  const devices = Array.from({ length: steps }, () => whole(random, 0, 3));
  for (const step of [0, 1, steps - 1]) devices[step] = Math.max(1, devices[step] ?? 0);
  const [dataOhmPerM = 0, powerOhmPerM = 0] =
    (
      [
        [0.0919, 0.057],
        [0.036, 0.0142],
        [0.0226, 0.0142],
      ] as const
    )[whole(random, 0, 2)] ?? [];
  const enteredM = Array.from({ length: steps - 1 }, () => between(random, 0.5, 5));
  const lengthDoubt = between(random, 0.02, 0.12);
  const lengthsM = enteredM.map((m) => m * (1 + between(random, -lengthDoubt, lengthDoubt)));
  const atM = [0];
  for (const m of enteredM) atM.push((atM.at(-1) ?? 0) + m);
  const feedStep = whole(random, 0, steps - 1);
  const total = devices.reduce((sum, count) => sum + count, 0);
  const trunkM = atM.at(-1) ?? 0;
  const far = (atM[feedStep] ?? 0) < trunkM / 2 ? steps - 1 : 0;
  const nearest = atM.map((m) => Math.abs(m - trunkM / 2));
  const spare = (): number => 120 * between(random, 0.95, 1.05);
  // a bus is planned so that it loses 1.5 V at the most
  const loopOhm = 2 * powerOhmPerM * Math.abs((atM[far] ?? 0) - (atM[feedStep] ?? 0));
  const mostA = Math.min(total * 0.15, 1.5 / loopOhm);
  return {
    model: {
      atM,
      devices,
      ohmPerM: dataOhmPerM,
      lengthDoubt,
      feedStep,
      middleStep: nearest.indexOf(Math.min(...nearest)),
      farStep: far,
      lossV: loopOhm * mostA,
    },
    lengthsM,
    dataOhmPerM: dataOhmPerM * between(random, 0.98, 1.03),
    powerOhmPerM,
    terminatorOhm: [spare(), spare(), spare()],
    nodeOhm: Array.from({ length: total }, () => between(random, 20_000, 50_000)),
    feedV: between(random, 11.8, 14.2),
    drawnA: mostA * between(random, 0.3, 0.9),
  };
};

/** A fault of a kind at a random spot of a bus. */
export const aFault = (random: Random, fault: string, { model }: RealBus): Planted => ({
  fault,
  step: whole(random, 0, model.atM.length - 1),
  end: random() < 0.5 ? 0 : 1,
  ohm: random(),
  lostV: between(random, 0.8, 5),
  wire: random() < 0.5 ? 'high' : 'low',
  to: random() < 0.5 ? 'minus' : 'plus',
  stuck: random() < 0.5,
});

type Reads = Map<string, number>;

/** Nodes of the network: both wires at each step, then minus, plus, shield and the plug of one device. */
const nodesOf = (steps: number) => ({
  high: (step: number): number => 2 * step,
  low: (step: number): number => 2 * step + 1,
  minus: 2 * steps,
  plus: 2 * steps + 1,
  shield: 2 * steps + 2,
  plugHigh: 2 * steps + 3,
  plugLow: 2 * steps + 4,
  count: 2 * steps + 5,
});

const networkOf = (random: Random, bus: RealBus, planted: Planted, lifted?: 0 | 1): Resistors => {
  const steps = bus.model.atM.length;
  const at = nodesOf(steps);
  const net = new Resistors(at.count);
  const { fault, step, end } = planted;
  const cut = Math.min(step, steps - 2);
  for (const [n, m] of bus.lengthsM.entries()) {
    const isOpen = fault === 'open-trunk' && n === cut;
    net.join(at.high(n), at.high(n + 1), bus.dataOhmPerM * m + (isOpen && planted.wire === 'high' ? 1e9 : 0));
    net.join(at.low(n), at.low(n + 1), bus.dataOhmPerM * m + (isOpen && planted.wire === 'low' ? 1e9 : 0));
  }
  const terminator = (where: number, which: 0 | 1 | 2): void =>
    net.join(at.high(where), at.low(where), bus.terminatorOhm[which]);
  for (const own of [0, 1] as const) {
    const isGone = fault === 'term-0' || ((fault === 'term-1' || fault === 'term-drop') && own === end);
    if (!isGone && own !== lifted) terminator(own === 0 ? 0 : steps - 1, own);
  }
  // a spare stands on a drop: at its far end, behind a few metres of the same cable
  const dropOhm = 2 * bus.dataOhmPerM * 2;
  const away = (step + 1) % steps;
  const other = end === 0 ? Math.max(1, away) : Math.min(steps - 2, away);
  if (fault === 'term-3') net.join(at.high(step), at.low(step), bus.terminatorOhm[2] + dropOhm);
  if (fault === 'term-drop') net.join(at.high(other), at.low(other), bus.terminatorOhm[2] + dropOhm);
  if (fault === 'short') net.join(at.high(step), at.low(step), 0.05 + planted.ohm);
  if (fault === 'water') net.join(at.high(step), at.low(step), 400 * 20 ** planted.ohm);
  let device = 0;
  for (const [n, count] of bus.model.devices.entries())
    for (let turn = 0; turn < count; turn += 1) {
      net.join(at.high(n), at.low(n), bus.nodeOhm[device] ?? 30_000);
      device += 1;
    }
  const insulated = (node: number, to: number): void => net.join(node, to, logBetween(random, 3e6, 1e9));
  for (const to of [at.minus, at.plus, at.shield]) for (const wire of [at.high(0), at.low(0)]) insulated(wire, to);
  const wireAt = planted.wire === 'high' ? at.high(step) : at.low(step);
  if (fault === 'data-to-supply')
    net.join(wireAt, planted.to === 'minus' ? at.minus : at.plus, 0.3 * 2000 ** planted.ohm);
  if (fault === 'water') net.join(at.high(step), at.plus, logBetween(random, 1500, 80_000));
  const broken = fault === 'open-drop' ? 1e9 : 0.1;
  net.join(at.plugHigh, at.high(step), broken);
  net.join(at.plugLow, at.low(step), 0.1);
  return net;
};

const meterOhm = (random: Random, ohm: number): number => {
  const read = ohm * (1 + between(random, -0.01, 0.01)) + between(random, 0.05, 0.45);
  return read > 2e7 ? Number.POSITIVE_INFINITY : read;
};
const meterV = (random: Random, volts: number): number =>
  volts * (1 + between(random, -0.005, 0.005)) + between(random, -0.02, 0.02);

const powerOff = (random: Random, bus: RealBus, planted: Planted): Reads => {
  const last = bus.model.atM.length - 1;
  const at = nodesOf(last + 1);
  const plain = networkOf(random, bus, planted);
  const { feedStep, middleStep } = bus.model;
  const wires = (['high', 'low'] as const).flatMap((wire) =>
    (['minus', 'plus', 'shield'] as const).map((to) => ({
      key: `${wire}-to-${to}`,
      ends: [at[wire](feedStep), at[to]] as const,
    })),
  );
  const pairAt = (step: number) => [at.high(step), at.low(step)] as const;
  const keys = ['data-ohm:end-1', 'data-ohm:middle', 'data-ohm:end-2', 'plug-ohm', ...wires.map(({ key }) => key)];
  const ends = [
    pairAt(0),
    pairAt(middleStep),
    pairAt(last),
    [at.plugHigh, at.plugLow] as const,
    ...wires.map((wire) => wire.ends),
  ];
  const lifted = (end: 0 | 1): number =>
    networkOf(random, bus, planted, end).between([pairAt(end === 0 ? 0 : last)])[0] ?? 0;
  const plainOhm = plain.between(ends);
  const reads: Reads = new Map(keys.map((key, turn) => [key, meterOhm(random, plainOhm[turn] ?? 0)]));
  reads.set('lifted-ohm:end-1', meterOhm(random, lifted(0)));
  reads.set('lifted-ohm:end-2', meterOhm(random, lifted(1)));
  const earthed = planted.fault === 'shield-twice' ? logBetween(random, 0.3, 400_000) : logBetween(random, 2e6, 1e9);
  reads.set('shield-to-ground', meterOhm(random, earthed));
  return reads;
};

/** Volts between red and black at each step, and how far black stands above the minus of the feed. */
const powered = (bus: RealBus, planted: Planted) => {
  const { atM, devices, feedStep } = bus.model;
  const total = devices.reduce((sum, count) => sum + count, 0);
  const cut = Math.min(planted.step, atM.length - 2);
  const beyond = devices.reduce((sum, count, n) => sum + ((cut >= feedStep ? n > cut : n <= cut) ? count : 0), 0);
  const beyondA = (bus.drawnA * beyond) / total;
  const isBad = planted.fault === 'bad-negative' && beyondA > 0;
  const badOhm = isBad ? planted.lostV / beyondA : 0;
  const net = solveDc({
    source: 'feed',
    sourceV: bus.feedV,
    edges: [
      { id: 'tee', from: 'feed', to: `s${feedStep}`, loopOhm: 0 },
      ...bus.lengthsM.map((m, n) => ({
        id: `t${n}`,
        from: `s${n}`,
        to: `s${n + 1}`,
        loopOhm: 2 * bus.powerOhmPerM * m + (n === cut ? badOhm : 0),
      })),
    ],
    loads: devices.map((count, n) => ({
      node: `s${n}`,
      behaves: 'current' as const,
      amps: (bus.drawnA * count) / total,
    })),
  });
  const voltsAt = (step: number): number => (net.solved ? (net.voltsAt.get(`s${step}`) ?? 0) : 0);
  const isBeyond = (step: number): boolean => isBad && (cut >= feedStep ? step > cut : step <= cut);
  const blackAt = (step: number): number => {
    const lostV = bus.feedV - voltsAt(step);
    const joint = isBeyond(step) ? planted.lostV : 0;
    return (lostV - joint) / 2 + joint;
  };
  return { voltsAt, blackAt };
};

/** What a meter shows of either wire at a step: all devices pull both to 2.5 V over their own black; what is shorted pulls harder. */
const levelAt = (
  random: Random,
  bus: RealBus,
  planted: Planted,
  power: ReturnType<typeof powered>,
  step: number,
  wire: 'high' | 'low',
): number => {
  const { devices } = bus.model;
  let siemens = 0;
  let pulled = 0;
  for (const [n, count] of devices.entries()) {
    siemens += count / 25_000;
    pulled += (count / 25_000) * (2.5 + power.blackAt(n));
  }
  if (planted.fault === 'data-to-supply') {
    const ohm = 0.3 * 2000 ** planted.ohm;
    siemens += 1 / ohm;
    pulled += (planted.to === 'plus' ? bus.feedV : 0) / ohm;
  }
  const idle = pulled / siemens - power.blackAt(step);
  const sign = wire === 'high' ? 1 : -1;
  if (planted.fault === 'swap-data' && planted.stuck) return idle + sign * between(random, 0.8, 1.4);
  const isSilent = planted.fault === 'short' || planted.fault === 'data-to-supply';
  return idle + (isSilent ? 0 : sign * between(random, 0, 0.6));
};

const powerOn = (random: Random, bus: RealBus, planted: Planted): Reads => {
  const { model, feedV } = bus;
  const last = model.atM.length - 1;
  const turned = planted.fault === 'swap-power' ? -1 : 1;
  const power = powered(bus, planted);
  const isBackFed = planted.fault === 'two-feeds';
  const v = (step: number): number =>
    meterV(
      random,
      turned * (power.voltsAt(step) + (isBackFed && step !== model.feedStep ? between(random, 0, 0.3) : 0)),
    );
  const spots = [
    ['end-1', 0],
    ['end-2', last],
    ['far', model.farStep],
    ['feed', model.feedStep],
  ] as const;
  const reads: Reads = new Map(spots.map(([spot, step]) => [`bus-volts:${spot}`, v(step)]));
  reads.set('feed-polarity', meterV(random, turned * (feedV + between(random, 0, 0.1))));
  reads.set('bus-dead', isBackFed ? meterV(random, feedV - between(random, 0, 1)) : between(random, 0, 0.2));
  const isDead = planted.fault === 'swap-power';
  for (const [end, step] of [
    ['end-1', 0],
    ['end-2', last],
  ] as const)
    for (const wire of ['high', 'low'] as const)
      reads.set(
        `${wire}-idle:${end}`,
        isDead ? -between(random, 0, 2) : meterV(random, levelAt(random, bus, planted, power, step, wire)),
      );
  return reads;
};

/** Devices that are counted, errors of ten minutes, and whether the ohms stand still. */
const traffic = (random: Random, bus: RealBus, planted: Planted): Reads => {
  const { devices } = bus.model;
  const total = devices.reduce((sum, count) => sum + count, 0);
  const cut = Math.min(planted.step, devices.length - 2);
  const near = devices.slice(0, cut + 1).reduce((sum, count) => sum + count, 0);
  const many = whole(random, 40, 50_000);
  const perhaps = random() < 0.5 ? 0 : whole(random, 1, 3000);
  const count: Record<string, readonly [devices: number, errors: number]> = {
    'term-1': [total - (random() < 0.2 ? 1 : 0), perhaps],
    'term-0': [random() < 0.5 ? 0 : whole(random, 0, total), many],
    'term-3': [total, perhaps],
    'term-drop': [total, perhaps],
    'open-trunk': [random() < 0.5 ? near : total - near, perhaps],
    'open-drop': [total - 1, whole(random, 0, 5)],
    short: [0, random() < 0.5 ? 0 : many],
    'swap-data': [planted.stuck ? 0 : whole(random, 0, total - 1), many],
    'data-to-supply': [0, random() < 0.5 ? 0 : many],
    'swap-power': [0, 0],
    'bad-negative': [total - (random() < 0.4 ? 1 : 0), perhaps],
    water: [total, perhaps],
  };
  const [seen, errors] = count[planted.fault] ?? [total, 0];
  return new Map([
    ['devices', Math.max(0, seen)],
    ['errors', errors],
    ['steady', planted.fault === 'water' ? 0 : 1],
  ]);
};

/** Everything that can be read of a bus with a fault planted in it. */
export const readAll = (random: Random, bus: RealBus, planted: Planted): Reads =>
  new Map([...powerOff(random, bus, planted), ...powerOn(random, bus, planted), ...traffic(random, bus, planted)]);
