import type { RemoteOrder } from '../facts/remote-figures.ts';
import type { PortNode } from '../readings/port-network.ts';
import { givesOrder, isNetworkSide, takesOrder } from './crossings.ts';

/** A port that is reached, and the one before it. */
export interface Reached {
  readonly node: PortNode;
  readonly before: Reached | undefined;
}

/** The ports of a way, from where it begins. */
export const portsOf = (last: Reached): string[] => {
  const ports: string[] = [];
  for (let at: Reached | undefined = last; at !== undefined; at = at.before) ports.push(at.node.id);
  return ports.reverse();
};

/** Breadth first over ports, so that the way to each is a shortest one. */
const search = (starts: readonly Reached[], next: (node: PortNode) => readonly PortNode[]): Map<string, Reached> => {
  const found = new Map(starts.map((start) => [start.node.id, start]));
  for (const before of found.values())
    for (const node of next(before.node)) if (!found.has(node.id)) found.set(node.id, { node, before });
  return found;
};

/** Ports that hear what a port says: those it is joined to where it may talk. */
const listenersOf = ({ memberships }: PortNode): PortNode[] =>
  memberships.flatMap(({ talks, net }) => (talks ? net.listeners.map(({ node }) => node) : []));

/** Everything of the network side that whatever is sent in at some ports gets to: by cables, radio, and inside switches. */
export const spreadOnNetwork = (starts: readonly PortNode[]): ReadonlyMap<string, Reached> =>
  search(
    starts.map((node) => ({ node, before: undefined })),
    (node) => [...listenersOf(node), ...node.group].filter(isNetworkSide),
  );

/**
 * Everything of the boat that an order gets to once it is written at a port: along buses and lines, and through units
 * whose turns carry it, by a port that understands it to one that sends it.
 */
export const spreadAboard = (start: Reached, order: RemoteOrder): ReadonlyMap<string, Reached> =>
  search([start], (node) => [
    // Whoever wrote it there could, whatever its sheet says of that port.
    ...(node === start.node ? node.memberships.flatMap(({ net }) => net.listeners.map((end) => end.node)) : []),
    ...listenersOf(node),
    ...node.group.filter((peer) => !isNetworkSide(peer)),
    ...(takesOrder(node, order)
      ? node.turnsFrom.flatMap(({ turn, to }) =>
          givesOrder(to, order) && turn.carries.some(({ reading }) => reading === order.reading) ? [to] : [],
        )
      : []),
  ]);
