import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { Hears, Port, Sheet, Turn } from '../boat/sheet.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { bareAt, carriedAt, type Giving, givenAt, heardAt } from './port-messages.ts';

/** What is electrically one: a bus with all its joins, or one other join. */
export interface Net {
  readonly id: string;
  readonly members: readonly Membership[];
  readonly listeners: readonly Membership[];
}

/** A port's place in a net: a port that may only listen there never talks, whatever its sheet can do. */
export interface Membership {
  readonly net: Net;
  readonly node: PortNode;
  readonly talks: boolean;
  readonly listens: boolean;
  readonly confirmed: boolean;
}

export interface TurnFrom {
  readonly turn: Turn;
  readonly to: PortNode;
}

/** One port of one unit aboard, with everything a message can do there. */
export interface PortNode {
  /** `kit.port` */
  readonly id: string;
  readonly kit: string;
  readonly port: Port;
  readonly memberships: readonly Membership[];
  /** ports of the same unit that are one network with this one: a switch, a bus that runs through */
  readonly group: readonly PortNode[];
  readonly turnsFrom: readonly TurnFrom[];
  /** readings that some turn of the unit brings to this port */
  readonly carriedTo: ReadonlySet<ReadingId>;
  /** readings the sheet names at this port beside its messages: bare in `sends`, or carried to it */
  readonly said: ReadonlySet<ReadingId>;
  readonly gives: ReadonlyMap<ReadingId, readonly Giving[]>;
  readonly hears: ReadonlyMap<ReadingId, readonly Hears[]>;
  /** the unit's own instance numbers at this port */
  readonly instances: ReadonlyMap<ReadingId, readonly number[]>;
}

export interface PortNetwork {
  readonly index: BoatIndex;
  readonly phase: number;
  /** every port aboard, by `kit.port`, sorted */
  readonly nodes: ReadonlyMap<string, PortNode>;
  readonly nodesOf: ReadonlyMap<string, readonly PortNode[]>;
}

interface OpenNode extends PortNode {
  readonly memberships: Membership[];
  readonly group: OpenNode[];
  readonly turnsFrom: TurnFrom[];
}

/** Whether a port takes in whatever comes and passes it on to its neighbours, as those of a switch do. */
export const isPassage = ({ group, port }: PortNode): boolean => group.length > 0 && port.hears === undefined;

const byId = (a: PortNode, b: PortNode): number => byCodeUnit(a.id, b.id);

const instancesAt = (unit: Kit, port: Port): ReadonlyMap<ReadingId, readonly number[]> => {
  const own = new Map<ReadingId, number[]>();
  for (const entry of unit.instances ?? [])
    if (entry.port === port.id) own.set(entry.reading, [...(own.get(entry.reading) ?? []), entry.instance]);
  for (const [reading, numbers] of own)
    own.set(
      reading,
      [...new Set(numbers)].sort((a, b) => a - b),
    );
  return own;
};

const nodeOf = (unit: Kit, sheet: Sheet, port: Port): OpenNode => {
  const carriedTo = carriedAt(sheet, port);
  const instances = instancesAt(unit, port);
  const said = new Set([...bareAt(port), ...carriedTo, ...instances.keys()]);
  return {
    id: `${unit.id}.${port.id}`,
    kit: unit.id,
    port,
    memberships: [],
    group: [],
    turnsFrom: [],
    carriedTo,
    said,
    gives: givenAt(port, said),
    hears: heardAt(port),
    instances,
  };
};

const tieInside = (sheet: Sheet, nodes: readonly OpenNode[]): void => {
  const byPort = new Map(nodes.map((node) => [node.port.id, node]));
  for (const group of [...(sheet.together ?? []), ...(sheet.inLine === undefined ? [] : [sheet.inLine])]) {
    const members = group.flatMap((port) => byPort.get(port) ?? []);
    for (const node of members)
      node.group.push(...members.filter((other) => other !== node && !node.group.includes(other)));
  }
  for (const turn of sheet.turns ?? []) {
    const to = byPort.get(turn.toPort);
    if (to !== undefined) byPort.get(turn.fromPort)?.turnsFrom.push({ turn, to });
  }
  for (const node of nodes) {
    node.group.sort(byId);
    node.turnsFrom.sort((a, b) => byId(a.to, b.to));
  }
};

type Nodes = ReadonlyMap<string, OpenNode>;

const joinUp = (index: BoatIndex, joins: readonly StandingJoin[], nodes: Nodes): void => {
  const nets = new Map<string, { id: string; members: Membership[]; listeners: Membership[] }>();
  for (const join of joins) {
    const id = join.bus ?? join.id;
    const net = nets.get(id) ?? { id, members: [], listeners: [] };
    nets.set(id, net);
    const confirmed = index.joins.get(join.id)?.confirmed !== undefined;
    for (const { kit, port, as } of join.members) {
      const node = nodes.get(`${kit}.${port}`);
      if (node === undefined || node.port.protocol !== join.kind) continue;
      const talks = as !== 'listen' && node.port.role !== 'listen';
      const listens = as !== 'talk' && node.port.role !== 'talk';
      const membership = { net, node, talks, listens, confirmed };
      node.memberships.push(membership);
      net.members.push(membership);
      if (listens) net.listeners.push(membership);
    }
  }
  for (const net of nets.values())
    for (const list of [net.members, net.listeners]) list.sort((a, b) => byId(a.node, b.node));
};

/** Every port aboard in a phase, joined as `joins` say. Pure; a member whose port has another protocol is not joined. */
export const portNetworkOf = (index: BoatIndex, phase: number, joins: readonly StandingJoin[]): PortNetwork => {
  const open = new Map<string, OpenNode>();
  const nodesOf = new Map<string, readonly OpenNode[]>();
  for (const unit of [...index.boat.kit].sort((a, b) => byCodeUnit(a.id, b.id))) {
    const sheet = index.sheetOf.get(unit.id);
    if (sheet === undefined || !isAboard(unit, phase)) continue;
    const nodes = sheet.ports.map((port) => nodeOf(unit, sheet, port)).sort(byId);
    tieInside(sheet, nodes);
    nodesOf.set(unit.id, nodes);
    for (const node of nodes) open.set(node.id, node);
  }
  joinUp(index, joins, open);
  return { index, phase, nodes: open, nodesOf };
};
