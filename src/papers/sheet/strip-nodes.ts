import type { BusEntry, LineEntry, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import type { SheetUnits } from './sheet-units.ts';
import type { UnitMark } from './unit-marks.ts';

/** What stands on the strip of a bus: an end with its terminator, the tee of a device, the feed, a spare tee. */
export interface StripNode {
  readonly kind: 'end' | 'device' | 'feed' | 'spare';
  readonly place: string;
  /** which stop of the walk it stands at */
  readonly stop: number;
  readonly alongM: number;
  readonly tee?: string;
  readonly mark?: UnitMark;
  readonly drop?: LineEntry;
  readonly lowestV?: number;
  readonly dropV?: number;
}

/** The trunk between two stops. */
export interface Stretch {
  readonly afterNode: number;
  readonly lengthM: number;
  readonly guessed: boolean;
  readonly about: readonly string[];
  readonly label?: string;
  /** load that runs through it */
  readonly carriesLen?: number;
}

export interface StripOfBus {
  readonly bus: BusEntry;
  readonly nodes: readonly StripNode[];
  readonly stretches: readonly Stretch[];
  /** `axis`: the stops stand under the boat; `trunk`: in the order of the trunk, by metres along it */
  readonly order: 'axis' | 'trunk';
  readonly units: SheetUnits;
  /** its volts are those with everything drawing */
  readonly withAll?: boolean;
}

type Step = BusEntry['walk'][number];

const runsOneWay = (xs: readonly number[]): boolean =>
  xs.every((x, at) => at === 0 || x >= (xs[at - 1] ?? x)) || xs.every((x, at) => at === 0 || x <= (xs[at - 1] ?? x));

/** The walk from left to right: from the stern where it runs along the boat, else as it is written. */
const readingOrder = (
  bus: BusEntry,
  index: DrawnBoat,
): { walk: readonly Step[]; order: StripOfBus['order']; isTurned?: boolean } => {
  const xs = bus.walk.map((step) => index.places.get(step.place)?.xM ?? 0);
  if (!runsOneWay(xs)) return { walk: bus.walk, order: 'trunk' };
  if ((xs[0] ?? 0) <= (xs.at(-1) ?? 0)) return { walk: bus.walk, order: 'axis' };
  const backwards = [...bus.walk].reverse().map((step, at): Step => {
    const via = bus.walk[bus.walk.length - at]?.via;
    return { place: step.place, tees: [...step.tees].reverse(), ...(via === undefined ? {} : { via }) };
  });
  return { walk: backwards, order: 'axis', isTurned: true };
};

const wayM = (index: DrawnBoat, id: string | undefined): number =>
  id === undefined ? 0 : (index.ways.get(id)?.length.valueM ?? 0);

const nodeOf = (
  tee: string,
  at: { place: string; stop: number; alongM: number },
  known: {
    marks: ReadonlyMap<string, UnitMark>;
    drops: ReadonlyMap<string, LineEntry>;
    volts: ReadonlyMap<string, BusEntry['volts'][number]>;
  },
): StripNode => {
  if (tee === 'feed') return { kind: 'feed', tee, ...at };
  if (tee.startsWith('spare@')) return { kind: 'spare', tee, ...at };
  const mark = known.marks.get(tee.split('.')[0] ?? '');
  const drop = known.drops.get(tee.split('.')[0] ?? '');
  const volts = known.volts.get(tee);
  return {
    kind: 'device',
    tee,
    ...at,
    ...(mark === undefined ? {} : { mark }),
    ...(drop === undefined ? {} : { drop }),
    ...(volts === undefined ? {} : { lowestV: volts.lowestV, dropV: volts.dropV }),
  };
};

/** Drops by unit: of the two ends of a drop one is the bus, the other a plug of the unit. */
const dropsByUnit = (plan: Plan, bus: BusEntry): ReadonlyMap<string, LineEntry> =>
  new Map(
    plan.lines.flatMap((line): [string, LineEntry][] => {
      if (line.kind !== 'drop') return [];
      const plug = line.from === bus.id ? line.to : line.to === bus.id ? line.from : undefined;
      return plug === undefined ? [] : [[plug.split('.')[0] ?? plug, line]];
    }),
  );

/** How a stretch names this end of itself. */
const stretchEnd = (bus: BusEntry, node: StripNode): string => `${bus.id}/${node.tee ?? `end@${node.place}`}`;

const stretchesOf = (
  plan: Plan,
  strip: { bus: BusEntry; nodes: readonly StripNode[]; isTurned: boolean },
): Stretch[] => {
  const lines = new Map(plan.lines.filter((line) => line.kind === 'trunk').map((line) => [line.id, line]));
  return strip.nodes.flatMap((node, at): Stretch[] => {
    const next = strip.nodes[at + 1];
    if (next === undefined || next.stop === node.stop) return [];
    const ends = [stretchEnd(strip.bus, node), stretchEnd(strip.bus, next)].sort(byCodeUnit);
    const line = lines.get(`trunk:${ends.join('~')}`);
    const { walk, along } = strip.bus;
    const carriesLen = along?.[strip.isTurned ? walk.length - next.stop : next.stop]?.carriesLen;
    const lengthM = line?.lengthM ?? next.alongM - node.alongM;
    return [
      {
        afterNode: at,
        lengthM,
        guessed: line?.guessed ?? false,
        about: [line?.id ?? strip.bus.id],
        ...(line?.label === undefined ? {} : { label: line.label }),
        ...(carriesLen === undefined ? {} : { carriesLen }),
      },
    ];
  });
};

/** The volts of the one solve at a node of the boat’s direct current. */
const solvedAt = ({ supplies }: Plan, node: string): number | undefined =>
  supplies.flatMap(({ at }) => at).find((entry) => entry.node === node)?.volts;

const solvedVolts = (plan: Plan, entry: BusEntry['volts'][number]): BusEntry['volts'][number] => {
  const lowestV = solvedAt(plan, entry.port);
  return lowestV === undefined ? entry : { ...entry, lowestV };
};

const solvedBus = (plan: Plan, bus: BusEntry): BusEntry => {
  const supplyV = solvedAt(plan, bus.id);
  return supplyV === undefined ? bus : { ...bus, supplyV };
};

/** The strip of one bus as a list from left to right: where each tee stands, what hangs on it, how long the trunk between. */
export const stripOfBus = ({
  bus,
  plan,
  index,
  marks,
  units,
  withAll = false,
}: {
  bus: BusEntry;
  plan: Plan;
  index: DrawnBoat;
  marks: readonly UnitMark[];
  units: SheetUnits;
  /** the volts of the one solve with everything drawing, in place of those with the panel at its main rating */
  withAll?: boolean;
}): StripOfBus => {
  const { walk, order, isTurned = false } = readingOrder(bus, index);
  const known = {
    marks: new Map(marks.map((mark) => [mark.kit.id, mark])),
    drops: dropsByUnit(plan, bus),
    volts: new Map(bus.volts.map((entry) => [entry.port, withAll ? solvedVolts(plan, entry) : entry])),
  };
  let alongM = 0;
  const nodes: StripNode[] = [];
  for (const [stop, step] of walk.entries()) {
    alongM += stop === 0 ? 0 : wayM(index, step.via);
    const at = { place: step.place, stop, alongM };
    if (stop === 0) nodes.push({ kind: 'end', ...at });
    nodes.push(...step.tees.map((tee) => nodeOf(tee, at, known)));
    if (stop === walk.length - 1) nodes.push({ kind: 'end', ...at });
  }
  return {
    bus: withAll ? solvedBus(plan, bus) : bus,
    nodes,
    stretches: stretchesOf(plan, { bus, nodes, isTurned }),
    order,
    units,
    withAll,
  };
};
