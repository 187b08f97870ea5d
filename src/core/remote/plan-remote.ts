import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { carriedKinds, commandIds, outsideKinds, type RemoteOrder, remoteOrders } from '../facts/remote-figures.ts';
import type { PortNetwork, PortNode } from '../readings/port-network.ts';
import type { RemoteCommand, RemoteEntry, RemoteGate, RemoteParts } from '../remote-shape.ts';
import { crossing, gateWrites, isBoatSide, isConverter, isNetworkSide, takesOrder, writesOf } from './crossings.ts';
import { portsOf, type Reached, spreadAboard, spreadOnNetwork } from './spread.ts';

/** Where somebody or something gets in. */
type WayIn = Pick<RemoteEntry, 'kit' | 'port' | 'by' | 'guests'> & { readonly starts: readonly PortNode[] };

const isKnownBetter = (one: RemoteCommand['known'], other: RemoteCommand['known']): boolean =>
  ['said', 'taken', 'perhaps'].indexOf(one) < ['said', 'taken', 'perhaps'].indexOf(other);

const waysInto = ({ index, nodesOf }: PortNetwork): WayIn[] =>
  [...nodesOf].flatMap(([kit, nodes]): WayIn[] => {
    const kind = index.sheetOf.get(kit)?.kind ?? '';
    const by = outsideKinds.get(kind);
    const ashore = nodes.filter((node) => isNetworkSide(node) && node.port.protocol !== 'wifi');
    const radios = nodes.filter(({ port }) => port.protocol === 'wifi');
    return [
      ...(by === undefined ? [] : [{ kit, by, guests: false, starts: ashore }]),
      ...radios.map((node): WayIn => {
        const port = node.port.id;
        return {
          kit,
          port,
          by: carriedKinds.has(kind) ? 'phone' : 'wifi',
          guests: index.kit.get(kit)?.remote?.guests === port,
          // a wifi that only talks takes nothing in
          starts: node.port.role === 'talk' ? [] : [node],
        };
      }),
    ];
  });

/** Where an order can be written, from the network side it has reached; `from` is absent where the unit itself is the way in. */
interface Door {
  readonly from: Reached | undefined;
  readonly to: PortNode;
}

const doorsOf = ({ nodesOf }: PortNetwork, way: WayIn, onNetwork: ReadonlyMap<string, Reached>): Door[] => {
  const inside = [...onNetwork.values()].flatMap((from) =>
    (nodesOf.get(from.node.kit) ?? []).filter(isBoatSide).map((to) => ({ from, to })),
  );
  // A box that joins the boat to the shore may stand on a bus without any network.
  const own = way.port === undefined ? (nodesOf.get(way.kit) ?? []).filter(isBoatSide) : [];
  return [...inside, ...own.map((to) => ({ from: undefined, to }))];
};

const gatesOf = (index: BoatIndex, doors: readonly Door[]): RemoteGate[] => {
  const gates = new Map<string, RemoteGate>();
  for (const { to } of doors) {
    const isGate = isConverter(index, to.kit) || writesOf(index, to.kit) !== 'unknown';
    const onto = to.memberships.map(({ net }) => net.id);
    if (!isGate || onto.length === 0) continue;
    gates.set(to.id, { port: to.id, onto: [...new Set(onto)].sort(byCodeUnit), writes: gateWrites(index, to) });
  }
  return [...gates.values()].sort((a, b) => byCodeUnit(a.port, b.port));
};

const isCommanded = (index: BoatIndex, node: PortNode, order: RemoteOrder): boolean => {
  const sheet = index.sheetOf.get(node.kit);
  if (order.what === 'engine') return node.port.protocol === 'engine-can';
  if (!takesOrder(node, order)) return false;
  return order.what === 'switching' || sheet?.drive !== undefined || sheet?.driveOutput !== undefined;
};

type Orders = { readonly way: Reached | undefined; readonly to: PortNode; readonly known: RemoteCommand['known'] };

const commandsOf = (index: BoatIndex, order: RemoteOrder, written: readonly Orders[]): RemoteCommand[] =>
  written.flatMap(({ way, to, known }) =>
    [...spreadAboard({ node: to, before: way }, order).values()].flatMap((reached) =>
      isCommanded(index, reached.node, order)
        ? [{ what: order.what, at: reached.node.id, by: portsOf(reached), through: to.kit, known }]
        : [],
    ),
  );

/** Orders that need no bus: the unit that is reached by the network takes them itself, unless it is said only to listen. */
const ownCommands = (index: BoatIndex, order: RemoteOrder, onNetwork: Iterable<Reached>): RemoteCommand[] =>
  [...onNetwork].flatMap((reached) => {
    const { kit, id } = reached.node;
    const writes = writesOf(index, kit);
    if (writes === 'listen-only' || !isCommanded(index, reached.node, order)) return [];
    const known = writes === 'may-write' ? ('said' as const) : ('perhaps' as const);
    return [{ what: order.what, at: id, by: portsOf(reached), through: kit, known }];
  });

/** One command for each unit commanded and each unit that writes it: the best known, then the shortest way. */
const worstOfEach = (commands: readonly RemoteCommand[]): RemoteCommand[] => {
  const worst = new Map<string, RemoteCommand>();
  for (const command of commands) {
    const key = [command.what, command.at.split('.')[0], command.through].join(' ');
    const other = worst.get(key);
    const isWorse =
      other === undefined ||
      isKnownBetter(command.known, other.known) ||
      (command.known === other.known && command.by.length < other.by.length);
    if (isWorse) worst.set(key, command);
  }
  return [...worst.values()].sort(
    (a, b) =>
      commandIds.indexOf(a.what) - commandIds.indexOf(b.what) ||
      byCodeUnit(a.at, b.at) ||
      byCodeUnit(a.through, b.through),
  );
};

const summaryOf = (gates: readonly RemoteGate[], commands: readonly RemoteCommand[]): RemoteEntry['writes'] => {
  if (gates.some(({ writes }) => writes === 'may-write') || commands.some(({ known }) => known === 'said'))
    return 'may-write';
  if (gates.some(({ writes }) => writes === 'unknown') || commands.length > 0) return 'unknown';
  return gates.length > 0 ? 'listen-only' : 'nothing';
};

const entryOf = (network: PortNetwork, way: WayIn): RemoteEntry => {
  const { index } = network;
  const { starts, ...said } = way;
  const onNetwork = spreadOnNetwork(starts);
  const doors = doorsOf(network, way, onNetwork);
  const commands = worstOfEach(
    remoteOrders.flatMap((order) => {
      const written = doors.flatMap(({ from, to }) => {
        const known = crossing(index, { from: from?.node, to, order });
        return known === undefined ? [] : [{ way: from, to, known }];
      });
      return [...commandsOf(index, order, written), ...ownCommands(index, order, onNetwork.values())];
    }),
  );
  const gates = gatesOf(index, doors);
  const units = new Set([...onNetwork.values()].map(({ node }) => node.kit));
  units.delete(way.kit);
  return { ...said, network: [...units].sort(byCodeUnit), gates, commands, writes: summaryOf(gates, commands) };
};

/**
 * Every way into the boat’s data and what can be done by it: a search of what carries inward, from wifi and shore over
 * sockets and switches to each unit that writes on to a bus or line, and on through turns that carry an order. Pure.
 */
export const planRemote = (network: PortNetwork): RemoteParts => ({
  remote: waysInto(network)
    .map((way) => entryOf(network, way))
    .sort((a, b) => byCodeUnit(a.kit, b.kit) || byCodeUnit(a.port ?? '', b.port ?? '')),
});
