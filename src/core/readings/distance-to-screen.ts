import type { ReadingId } from '../facts/reading-ids.ts';
import type { Net, PortNetwork, PortNode } from './port-network.ts';

/** How far a port is from a screen along joins and through units, whether or not a reading is carried there. */
export interface DistanceToScreen {
  /** from a port that a message has reached */
  readonly into: (node: PortNode) => number;
  /** from a port that a message is about to leave */
  readonly outOf: (node: PortNode) => number;
}

/** A port of the screen that hears nothing of the reading counts as a little farther than one that does. */
const deafScreenPort = 2;

/** A unit made to pass messages on is likelier to be the way than one that would have to be something else. */
const through = { carries: 1, turns: 2, wrongWay: 3, nothing: 7 } as const;

/** Cost of going through a unit from one of its ports to another, by what its sheet turns between them. */
export const throughCost = (from: PortNode, to: PortNode, reading: ReadingId): number => {
  if (from.group.includes(to)) return through.carries;
  const turns = from.turnsFrom.filter((entry) => entry.to === to);
  if (turns.some(({ turn }) => turn.carries.some((carry) => carry.reading === reading))) return through.carries;
  if (turns.length > 0) return through.turns;
  return to.turnsFrom.some((entry) => entry.to === from) ? through.wrongWay : through.nothing;
};

type Distances = Map<PortNode, number>;

const lower = (distances: Distances, node: PortNode, value: number): boolean => {
  if (value >= (distances.get(node) ?? Number.POSITIVE_INFINITY)) return false;
  distances.set(node, value);
  return true;
};

/** The nearest listener of a net and the nearest after it: a port is never its own way on. */
interface Nearest {
  readonly node: PortNode | undefined;
  readonly first: number;
  readonly second: number;
}

const nearestOf = (net: Net, into: Distances): Nearest => {
  let nearest: Nearest = { node: undefined, first: Number.POSITIVE_INFINITY, second: Number.POSITIVE_INFINITY };
  for (const { node } of net.listeners) {
    const distance = into.get(node) ?? Number.POSITIVE_INFINITY;
    if (distance < nearest.first) nearest = { node, first: distance, second: nearest.first };
    else if (distance < nearest.second) nearest = { ...nearest, second: distance };
  }
  return nearest;
};

/** The nearest listener of each net, looked up once for every round of walking back. */
const nearestByNet = (into: Distances): ((net: Net, self: PortNode) => number) => {
  const known = new Map<Net, Nearest>();
  return (net, self) => {
    const nearest = known.get(net) ?? nearestOf(net, into);
    known.set(net, nearest);
    return nearest.node === self ? nearest.second : nearest.first;
  };
};

/** Walks back from a screen over every join and through every unit, until no port comes any nearer. Pure. */
export const distanceToScreen = (network: PortNetwork, screen: string, reading: ReadingId): DistanceToScreen => {
  const into: Distances = new Map();
  const outOf: Distances = new Map();
  for (const node of network.nodesOf.get(screen) ?? [])
    if (node.port.role !== 'talk' || node.hears.has(reading))
      into.set(node, node.hears.has(reading) ? 0 : deafScreenPort);

  const comeNearer = (node: PortNode, nearestOn: ReturnType<typeof nearestByNet>): boolean => {
    let nearer = false;
    for (const { net, talks } of node.memberships)
      if (talks) nearer = lower(outOf, node, 1 + nearestOn(net, node)) || nearer;
    if (node.kit === screen) return nearer;
    for (const to of network.nodesOf.get(node.kit) ?? []) {
      const out = to === node ? undefined : outOf.get(to);
      if (out !== undefined) nearer = lower(into, node, throughCost(node, to, reading) + out) || nearer;
    }
    return nearer;
  };

  let moved = true;
  while (moved) {
    moved = false;
    const nearestOn = nearestByNet(into);
    for (const node of network.nodes.values()) moved = comeNearer(node, nearestOn) || moved;
  }
  return {
    into: (node) => into.get(node) ?? Number.POSITIVE_INFINITY,
    outOf: (node) => outOf.get(node) ?? Number.POSITIVE_INFINITY,
  };
};
