import type { Plan } from '../../core/plan-shape.ts';
import type { DrawnBoat } from '../sheet/drawn-boat.ts';
import type { SheetUnits } from '../sheet/sheet-units.ts';
import { type StripNode, type StripOfBus, stripOfBus } from '../sheet/strip-nodes.ts';
import type { UnitMark } from '../sheet/unit-marks.ts';
import { type LaneEdge, laneEdges } from './lane-edges.ts';

/** A unit as it hangs in a lane, with what hangs on it. */
export interface LaneUnit {
  readonly mark: UnitMark;
  /** it has its place elsewhere: here its number is repeated and nothing hangs on it */
  readonly again: boolean;
  /** what it hangs on; absent for the tee of a bus and for the first of a lane */
  readonly edge?: LaneEdge;
  readonly hangs: readonly LaneUnit[];
}

/** A bus with its tees, a network with its hub, or what is joined to neither. */
export interface Lane {
  readonly kind: 'bus' | 'ethernet' | 'own';
  readonly title: readonly string[];
  readonly about: readonly string[];
  readonly strip?: StripOfBus;
  readonly hub?: LaneUnit;
  /** what hangs on the trunk or the hub; in a lane of its own, the first of each tree */
  readonly heads: readonly LaneUnit[];
  /** units of the bus lane just above from which a line comes down to the hub */
  readonly ties: readonly { readonly unit: string; readonly edge: LaneEdge }[];
  /** nodes that are no ends of the trunk: there it goes on in another part of the lane */
  readonly cuts?: ReadonlySet<StripNode>;
}

const otherEnd = ({ ends }: LaneEdge, unit: string): string => (ends[0] === unit ? ends[1] : ends[0]);

interface Known {
  readonly marks: ReadonlyMap<string, UnitMark>;
  readonly edgesOf: ReadonlyMap<string, readonly LaneEdge[]>;
}

const gather = (marks: readonly UnitMark[], edges: readonly LaneEdge[]): Known => {
  const byUnit = new Map(marks.map((mark) => [mark.kit.id, mark]));
  const edgesOf = new Map<string, LaneEdge[]>();
  for (const edge of edges) {
    if (!edge.ends.every((end) => byUnit.has(end))) continue;
    for (const end of edge.ends) edgesOf.set(end, [...(edgesOf.get(end) ?? []), edge]);
  }
  return { marks: byUnit, edgesOf };
};

const numberOf = ({ marks }: Known, unit: string): number => marks.get(unit)?.number ?? 0;

/** Units that can be reached from one by the edges asked for. */
const reached = (from: string, edgesOf: (unit: string) => readonly LaneEdge[]): string[] => {
  const found = new Set([from]);
  for (const unit of found) for (const edge of edgesOf(unit)) found.add(otherEnd(edge, unit));
  return [...found];
};

/** The unit of a group with the most lines on it; of equals the foremost number. */
const middleOf = (known: Known, units: readonly string[], edgesOf: (unit: string) => readonly LaneEdge[]): string =>
  [...units].sort((a, b) => edgesOf(b).length - edgesOf(a).length || numberOf(known, a) - numberOf(known, b))[0] ?? '';

/** Units that lines hold together, and the one with the most lines among them. */
interface Group {
  readonly middle: string;
  readonly units: readonly string[];
}

/** Every group of units that the edges hold together, by its middle unit. */
const groupsOf = (known: Known, units: readonly string[], edgesOf: (unit: string) => readonly LaneEdge[]): Group[] => {
  const seen = new Set<string>();
  return units.flatMap((unit) => {
    if (seen.has(unit) || edgesOf(unit).length === 0) return [];
    const group = reached(unit, edgesOf);
    for (const one of group) seen.add(one);
    return [{ middle: middleOf(known, group, edgesOf), units: group }];
  });
};

/** One unit on another: by which line, and whether it has its place elsewhere. */
interface Hung {
  readonly unit: string;
  readonly edge?: LaneEdge;
  readonly again: boolean;
}

type Hangs = ReadonlyMap<string, readonly Hung[]>;

/**
 * Hangs every unit on the nearest one that has a place already, in the fewest steps. A line between two that both have
 * a place repeats the second one's number at the first.
 */
const hangOn = (roots: readonly string[], edgesOf: (unit: string) => readonly LaneEdge[]): Hangs => {
  const hangs = new Map<string, Hung[]>();
  const drawn = new Set<LaneEdge>();
  const placed = new Set(roots);
  for (const unit of placed) {
    for (const edge of edgesOf(unit)) {
      if (drawn.has(edge)) continue;
      drawn.add(edge);
      const other = otherEnd(edge, unit);
      hangs.set(unit, [...(hangs.get(unit) ?? []), { unit: other, edge, again: placed.has(other) }]);
      placed.add(other);
    }
  }
  return hangs;
};

const unitsOnBus = ({ nodes }: StripOfBus): string[] => nodes.flatMap(({ mark }) => mark?.kit.id ?? []);

/** What hangs on a unit within one lane, and whether the unit has its place in another. */
interface Within {
  readonly hangsOf: (unit: string) => readonly Hung[];
  readonly isElsewhere: (unit: string) => boolean;
}

const treeOf = (known: Known, within: Within, from: Hung): LaneUnit[] => {
  const mark = known.marks.get(from.unit);
  if (mark === undefined) return [];
  const below = from.again ? [] : [...within.hangsOf(from.unit)];
  below.sort((a, b) => numberOf(known, a.unit) - numberOf(known, b.unit));
  return [
    {
      mark,
      again: from.again || within.isElsewhere(from.unit),
      ...(from.edge === undefined ? {} : { edge: from.edge }),
      hangs: below.flatMap((one) => treeOf(known, within, one)),
    },
  ];
};

const count = (units: number): string => (units === 1 ? '1 unit' : `${units} units`);

/** A line comes down from a unit of the bus above where nothing else hangs on that unit. */
const tiedTo = (lane: Lane, above: Lane | undefined): Lane => {
  if (above?.kind !== 'bus') return lane;
  const free = new Set(
    above.heads.filter(({ hangs, again }) => hangs.length === 0 && !again).map((u) => u.mark.kit.id),
  );
  const isTie = ({ again, mark, hangs }: LaneUnit): boolean => again && hangs.length === 0 && free.has(mark.kit.id);
  return {
    ...lane,
    heads: lane.heads.filter((head) => !isTie(head)),
    ties: lane.heads.flatMap(({ edge, ...head }) =>
      edge !== undefined && isTie({ ...head, edge }) ? [{ unit: head.mark.kit.id, edge }] : [],
    ),
  };
};

/** Networks stand under the bus they share the most units with; those that share none come last. */
const inOrder = (buses: readonly Lane[], networks: readonly Lane[], withLeads: boolean): Lane[] => {
  const shared = (bus: Lane, network: Lane): number => {
    const ids = new Set(bus.heads.map(({ mark }) => mark.kit.id));
    return network.heads.filter(({ mark }) => ids.has(mark.kit.id)).length;
  };
  const under = new Map<Lane | undefined, Lane[]>();
  for (const network of networks) {
    const [best] = buses
      .filter((bus) => shared(bus, network) > 0)
      .sort((a, b) => shared(b, network) - shared(a, network));
    under.set(best, [...(under.get(best) ?? []), network]);
  }
  return [
    ...buses.flatMap((bus) => [
      bus,
      ...(under.get(bus) ?? []).map((one, at) => (at === 0 && withLeads ? tiedTo(one, bus) : one)),
    ]),
    ...(under.get(undefined) ?? []),
  ];
};

const busLanes = (
  known: Known,
  strips: readonly StripOfBus[],
  { hangs, index }: { hangs: Hangs; index: DrawnBoat },
) => {
  const seen = new Set<string>();
  return strips.map((strip): Lane => {
    const heads = unitsOnBus(strip).flatMap((unit) => {
      const again = seen.has(unit);
      seen.add(unit);
      return treeOf(known, { hangsOf: (id) => hangs.get(id) ?? [], isElsewhere: () => false }, { unit, again });
    });
    const name = index.buses.get(strip.bus.id)?.name ?? strip.bus.id;
    return { kind: 'bus', title: [name, count(heads.length)], about: [strip.bus.id], strip, heads, ties: [] };
  });
};

const networkLanes = (known: Known, networks: readonly Group[], within: Within): Lane[] =>
  networks.map(({ middle, units }) => {
    const [hub] = treeOf(known, within, { unit: middle, again: false });
    return {
      kind: 'ethernet',
      title: ['Ethernet', count(units.length)],
      about: [],
      ...(hub === undefined ? {} : { hub }),
      heads: hub?.hangs ?? [],
      ties: [],
    };
  });

const ownLane = (known: Known, loose: readonly Group[], within: Within): Lane => ({
  kind: 'own',
  title: ['On lines of', 'their own'],
  about: [],
  heads: loose.flatMap(({ middle }) => treeOf(known, within, { unit: middle, again: false })),
  ties: [],
});

/**
 * The whole network of a boat as lanes: each bus, each network with its hub, and what is joined to neither. Whatever
 * speaks from unit to unit hangs on the unit of a lane that it is nearest to.
 */
export const laneTree = ({
  plan,
  index,
  marks,
  units,
  withTies: isTied,
}: {
  plan: Plan;
  index: DrawnBoat;
  marks: readonly UnitMark[];
  units: SheetUnits;
  /** a unit of a bus and of the network under it stands in one place, and a line leads on down from it */
  withTies: boolean;
}): Lane[] => {
  const known = gather(marks, laneEdges(plan));
  const ids = marks.map(({ kit }) => kit.id);
  const edgesOf = (unit: string): readonly LaneEdge[] => known.edgesOf.get(unit) ?? [];
  const sockets = (unit: string): LaneEdge[] => edgesOf(unit).filter(({ kind }) => kind === 'ethernet');
  const pairs = (unit: string): LaneEdge[] => edgesOf(unit).filter(({ kind }) => kind !== 'ethernet');
  const strips = plan.buses.map((bus) => stripOfBus({ bus, plan, index, marks, units }));
  const onBus = new Set(strips.flatMap(unitsOnBus));
  const networks = groupsOf(known, ids, sockets);
  const netHangs = hangOn(
    networks.map(({ middle }) => middle),
    sockets,
  );
  const inLanes = [...new Set([...onBus, ...networks.flatMap((network) => network.units)])];
  const near = new Set(inLanes.flatMap((unit) => reached(unit, pairs)));
  const loose = groupsOf(
    known,
    ids.filter((id) => !near.has(id)),
    pairs,
  );
  const hangs = hangOn([...inLanes, ...loose.map(({ middle }) => middle)], pairs);
  const onNetwork: Within = {
    hangsOf: (unit) => [...(netHangs.get(unit) ?? []), ...(onBus.has(unit) ? [] : (hangs.get(unit) ?? []))],
    isElsewhere: (unit) => onBus.has(unit),
  };
  const nets = networkLanes(known, networks, onNetwork);
  const own = ownLane(known, loose, { hangsOf: (unit) => hangs.get(unit) ?? [], isElsewhere: () => false });
  return [
    ...inOrder(busLanes(known, strips, { hangs, index }), nets, isTied),
    ...(own.heads.length === 0 ? [] : [own]),
  ];
};
