import type { Boat } from '../../core/boat/boat-schema.ts';
import { limitOf } from '../../core/boat/limit-of.ts';
import { lenCurrent } from '../../core/facts/bus-limits.ts';
import type { BusEntry } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { currencyOf } from './cure-words.ts';
import { layoutWords } from './layout-words.ts';
import { printCost, printMs, printPct } from './print-figure.ts';

/** One line of the backbone block; `source` says where its limit comes from. */
export interface BackboneFigure {
  readonly name: string;
  readonly value: string;
  readonly source?: string;
  /** true where the value is past its limit */
  readonly over: boolean;
}

const lowestV = (bus: BusEntry): number | undefined =>
  bus.volts.length === 0 ? undefined : Math.min(...bus.volts.map((entry) => entry.lowestV));

const voltsFigure = (boat: Boat, bus: BusEntry): readonly BackboneFigure[] => {
  const least = limitOf(boat, 'nmea2000-device-volts-least');
  const volts = lowestV(bus);
  if (volts === undefined) return [];
  const value = `${volts.toFixed(2)} V, least ${least.value}`;
  return [{ name: 'lowest volts', value, source: least.source, over: volts < least.value }];
};

const lengthFigures = (boat: Boat, bus: BusEntry): readonly BackboneFigure[] => {
  const trunk = limitOf(boat, `nmea2000-trunk-${bus.grade}-fail`);
  const one = limitOf(boat, 'nmea2000-one-drop');
  const all = limitOf(boat, 'nmea2000-all-drops');
  const of = (lengthM: number, limit: typeof trunk, name: string, longestM = lengthM): BackboneFigure => ({
    name,
    value: `${printLength({ valueM: lengthM, as: 'metres' })} of ${limit.value}`,
    source: limit.source,
    over: longestM > limit.value,
  });
  return [
    of(bus.lengthM, trunk, 'trunk', bus.longestM),
    of(bus.longestDropM, one, 'longest drop'),
    of(bus.dropsM, all, 'drops together'),
  ];
};

const trafficFigure = ({ traffic }: BusEntry): readonly BackboneFigure[] =>
  traffic === undefined
    ? []
    : [
        {
          name: 'messages',
          value: `${printPct(traffic.averagePct)} typical, ${printPct(traffic.worstPct)} worst`,
          over: false,
        },
      ];

/** Waits differ by how a sender queues the frames of a long message, which no manual states: then both ends are said. */
const anyWait = ({ anyMs, anyFedSinglyMs }: NonNullable<BusEntry['traffic']['wait']>): string => {
  if (anyMs === undefined) return 'no bound for the rest: more may be sent than the bus carries';
  if (anyFedSinglyMs === undefined) return `${printMs(anyMs)} or more for any message`;
  return printMs(anyMs) === printMs(anyFedSinglyMs)
    ? `${printMs(anyMs)} for any message`
    : `${printMs(anyMs)} to ${printMs(anyFedSinglyMs)} for any message`;
};

const waitFigure = ({ traffic: { wait } }: BusEntry): readonly BackboneFigure[] => {
  if (wait === undefined) return [];
  const steering = wait.steeringMs === undefined ? [] : [`${printMs(wait.steeringMs)} to steer by`];
  return [{ name: 'longest wait', value: [...steering, anyWait(wait)].join(', '), over: wait.anyMs === undefined }];
};

const loadA = ({ len }: Pick<BusEntry, 'len'>): number => (len * lenCurrent.value) / 1000;

/** The largest fuse the cable bears; where all units together draw more, each leg has to have its own (source: practice-bus-feed). */
const fuseWords = (fuseA: number, allA: number): string =>
  allA > fuseA
    ? `at most ${fuseA} A in each leg; one for both would not bear ${allA.toFixed(2)} A`
    : `at most ${fuseA} A`;

/** Each side of the feed with its current and its moment; one side only where the trunk is fed at its end. */
const legFigures = (boat: Boat, { legs = [], fuseA, len }: BusEntry): readonly BackboneFigure[] => {
  const carrying = legs.filter(({ amps }) => amps > 0);
  if (carrying.length === 0) return [];
  const names = new Map(boat.places.map(({ id, name }) => [id, name]));
  const fused =
    fuseA === undefined ? [] : [{ name: 'fuse at the feed', value: fuseWords(fuseA, loadA({ len })), over: false }];
  return [
    ...carrying.map(({ towards, amps, ampMetres }, at) => ({
      name: carrying.length === 1 ? 'leg' : `leg ${at + 1}`,
      value: `${amps.toFixed(2)} A, ${ampMetres.toFixed(1)} Am to ${names.get(towards) ?? towards}`,
      over: false,
    })),
    ...fused,
  ];
};

/** The figures of one backbone, each beside its limit, as the margin prints them. */
export const backboneFigures = ({ boat, bus }: { boat: Boat; bus: BusEntry }): readonly BackboneFigure[] => {
  const devices = limitOf(boat, 'nmea2000-devices');
  const currency = currencyOf(boat);
  const { cost, status } = bus.layout;
  return [
    ...lengthFigures(boat, bus),
    {
      name: 'devices',
      value: `${bus.devices} of ${devices.value}`,
      source: devices.source,
      over: bus.devices > devices.value,
    },
    ...legFigures(boat, bus),
    { name: 'load', value: `${bus.len} LEN, ${loadA(bus).toFixed(2)} A`, over: false },
    ...voltsFigure(boat, bus),
    ...trafficFigure(bus),
    ...waitFigure(bus),
    { name: 'price', value: printCost({ cost, currency }), over: false },
    {
      name: 'layout',
      value: layoutWords(bus.layout).full,
      over: status === 'infeasible' || bus.layout.broken.length > 0,
    },
  ];
};
