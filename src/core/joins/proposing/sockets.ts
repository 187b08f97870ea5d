import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Join } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { limitValue } from '../../boat/limit-value.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { PortNetwork, PortNode } from '../../readings/port-network.ts';

/** Ports that something can still be joined to. */
export interface Sockets {
  /** ports of a backbone that are on none */
  readonly loose: readonly PortNode[];
  /** other ports that can still be joined, one for all that are alike */
  readonly talkers: readonly PortNode[];
  readonly listeners: readonly PortNode[];
  /** how many joins there is room for, by what a join takes */
  readonly room: ReadonlyMap<string, number>;
  /** what a join takes at a port */
  readonly takenAt: (node: PortNode, as: 'talk' | 'listen') => string;
  /** units that are on a bus, and where; those that could be, while none is */
  readonly placesOn: (bus: string) => readonly { readonly kit: string; readonly place: string }[];
}

/** The ports of a unit that are one network inside it and say nothing of their own; a lone port stands for itself. */
export const alike = (node: PortNode): readonly PortNode[] => [
  node,
  ...node.group.filter(
    ({ port }) =>
      port.protocol === node.port.protocol &&
      port.dialect === node.port.dialect &&
      port.hears === undefined &&
      port.sends === undefined &&
      node.port.hears === undefined &&
      node.port.sends === undefined,
  ),
];

/** The ports alike to one that are free, in order. */
export const freeAlike = (node: PortNode, isTaken: (port: string) => boolean): readonly PortNode[] =>
  alike(node)
    .filter(({ id }) => !isTaken(id))
    .sort((a, b) => byCodeUnit(a.id, b.id));

/** A join whose talker is not aboard holds nothing, nor one in which nobody else is. */
const holdsTogether = (members: StandingJoin['members']): boolean =>
  members.length > 1 && (members.some(({ as }) => as === 'talk') || members.every(({ as }) => as === 'both'));

/** Ports that stand in a join with somebody, and how many listen to each that talks. */
export const joinedPorts = (
  standing: readonly StandingJoin[],
): { readonly taken: ReadonlySet<string>; readonly heardBy: ReadonlyMap<string, number> } => {
  const taken = new Set<string>();
  const heardBy = new Map<string, number>();
  for (const { bus, members } of standing) {
    if (bus === undefined && !holdsTogether(members)) continue;
    const listeners = members.filter(({ as }) => as === 'listen').length;
    for (const { kit, port, as } of members) {
      taken.add(`${kit}.${port}`);
      if (as === 'talk') heardBy.set(`${kit}.${port}`, (heardBy.get(`${kit}.${port}`) ?? 0) + listeners);
    }
  }
  return { taken, heardBy };
};

/** What is still free on a boat on which some joins stand. */
export const freePorts = (
  index: BoatIndex,
  network: PortNetwork,
  standing: readonly StandingJoin[],
  oneToMany: ReadonlySet<Join['kind']>,
): Sockets => {
  const { taken, heardBy } = joinedPorts(standing);
  const room = new Map<string, number>();
  const talksToMany = ({ port }: PortNode): boolean => port.protocol !== 'dc' && oneToMany.has(port.protocol);
  const first = (node: PortNode): PortNode => freeAlike(node, (id) => taken.has(id))[0] ?? node;
  const takenAt: Sockets['takenAt'] = (node, as) =>
    as === 'talk' && talksToMany(node) ? `from ${node.id}` : `at ${first(node).id}`;

  const nodes = [...network.nodes.values()].filter(({ port }) => port.protocol !== 'dc');
  const loose = nodes.filter(({ id, port }) => port.protocol === 'nmea2000' && !taken.has(id));
  const others = nodes.filter(({ port }) => port.protocol !== 'nmea2000');
  const isFree = (node: PortNode): boolean =>
    node.port.protocol === 'wifi' || (!taken.has(node.id) && first(node) === node);
  const talkers = others.filter((node) => talksToMany(node) || isFree(node));
  const listeners = others.filter(isFree);

  const mostListeners = limitValue(index.boat, 'nmea0183-listeners');
  for (const node of [...loose, ...listeners])
    room.set(takenAt(node, 'listen'), freeAlike(node, (id) => taken.has(id)).length);
  for (const node of talkers) {
    if (!talksToMany(node)) room.set(takenAt(node, 'talk'), freeAlike(node, (id) => taken.has(id)).length);
    else if (node.port.protocol === 'nmea0183')
      room.set(takenAt(node, 'talk'), Math.max(0, mostListeners - (heardBy.get(node.id) ?? 0)));
  }
  const mostDevices = limitValue(index.boat, 'nmea2000-devices');
  const placesOn = (bus: string): { kit: string; place: string }[] => {
    const on = standing.filter((join) => join.bus === bus).flatMap(({ members }) => members.map(({ kit }) => kit));
    const units = on.length > 0 ? on : loose.map(({ kit }) => kit);
    return [...new Set(units)].flatMap((kit) => {
      const place = index.kit.get(kit)?.place;
      return place === undefined ? [] : [{ kit, place }];
    });
  };
  for (const bus of index.buses.keys()) {
    const on = standing.filter((join) => join.bus === bus).flatMap(({ members }) => members.map(({ kit }) => kit));
    room.set(`bus ${bus}`, Math.max(0, mostDevices - new Set(on).size));
  }
  return { loose, talkers, listeners, room, takenAt, placesOn };
};
