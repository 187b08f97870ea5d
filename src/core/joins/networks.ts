import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { Port } from '../boat/sheet.ts';
import type { StandingJoin } from '../plan-shape.ts';

/** One socket of a unit on a network of data cables. */
export interface NetworkPort {
  /** `kit.port` */
  readonly id: string;
  readonly kit: string;
  readonly port: Port;
}

/** A cable between two sockets; `join` is its id. */
export interface NetworkLink {
  readonly join: string;
  readonly ends: readonly [NetworkPort, NetworkPort];
}

/** Units joined by Ethernet cables into one network; `id` is its first unit. */
export interface Network {
  readonly id: string;
  readonly units: readonly string[];
  readonly ports: readonly NetworkPort[];
  readonly links: readonly NetworkLink[];
  /** switches and routers: units in which three sockets or more are one network, with those and how many are free */
  readonly hubs: readonly { readonly kit: string; readonly sockets: readonly string[]; readonly free: number }[];
  /** wifi that is one network with it, `kit.port` */
  readonly radios: readonly string[];
}

/** Sockets in one unit from which it counts as a hub: with two a cable only runs through it. */
const hubSockets = 3;

class Groups {
  readonly #above = new Map<string, string>();

  of(port: string): string {
    const above = this.#above.get(port);
    return above === undefined || above === port ? port : this.of(above);
  }

  tie(one: string, other: string): void {
    const [a, b] = [this.of(one), this.of(other)].sort(byCodeUnit);
    if (a !== undefined && b !== undefined && a !== b) this.#above.set(b, a);
  }
}

const portsAboard = (index: BoatIndex, phase: number): ReadonlyMap<string, NetworkPort> => {
  const found = new Map<string, NetworkPort>();
  for (const unit of index.boat.kit) {
    if (!isAboard(unit, phase)) continue;
    for (const port of index.sheetOf.get(unit.id)?.ports ?? []) {
      if (port.protocol !== 'ethernet' && port.protocol !== 'wifi') continue;
      const id = `${unit.id}.${port.id}`;
      found.set(id, { id, kit: unit.id, port });
    }
  }
  return found;
};

const linksOf = (joins: readonly StandingJoin[], ports: ReadonlyMap<string, NetworkPort>): NetworkLink[] =>
  joins.flatMap(({ id, kind, members }): NetworkLink[] => {
    const [one, other] = members.map(({ kit, port }) => ports.get(`${kit}.${port}`));
    return kind !== 'ethernet' || one === undefined || other === undefined ? [] : [{ join: id, ends: [one, other] }];
  });

const hubsAmong = (
  index: BoatIndex,
  { units, used, isOnIt }: { units: readonly string[]; used: ReadonlySet<string>; isOnIt: (port: string) => boolean },
): Network['hubs'] =>
  units.flatMap((kit) => {
    const sheet = index.sheetOf.get(kit);
    const isEthernet = (id: string): boolean =>
      sheet?.ports.some((port) => port.id === id && port.protocol === 'ethernet') === true;
    const groups = (sheet?.together ?? [])
      .filter(([first]) => first !== undefined && isOnIt(`${kit}.${first}`))
      .map((group) => group.filter(isEthernet));
    const [largest = []] = groups.sort((one, other) => other.length - one.length);
    if (largest.length < hubSockets) return [];
    const free = largest.filter((port) => !used.has(`${kit}.${port}`)).length;
    return [{ kit, sockets: largest, free }];
  });

/**
 * The networks of Ethernet cables that stand in a phase, sorted by id: what hangs together by cables and inside units. A
 * unit with sockets that no cable reaches is on none.
 */
export const networksOf = (index: BoatIndex, phase: number, joins: readonly StandingJoin[]): Network[] => {
  const ports = portsAboard(index, phase);
  const links = linksOf(joins, ports);
  const groups = new Groups();
  for (const { ends } of links) groups.tie(ends[0].id, ends[1].id);
  for (const { id: kit } of index.boat.kit) {
    for (const [first = '', ...others] of index.sheetOf.get(kit)?.together ?? []) {
      for (const other of others) groups.tie(`${kit}.${first}`, `${kit}.${other}`);
    }
  }
  const used = new Set(links.flatMap(({ ends }) => ends.map(({ id }) => id)));
  const byGroup = new Map<string, NetworkLink[]>();
  for (const link of links) {
    const group = groups.of(link.ends[0].id);
    byGroup.set(group, [...(byGroup.get(group) ?? []), link]);
  }
  return [...byGroup]
    .map(([group, own]): Network => {
      const onIt = [...ports.values()].filter(({ id }) => groups.of(id) === group);
      const wired = onIt.filter(({ port }) => port.protocol === 'ethernet');
      const units = [...new Set(own.flatMap(({ ends }) => ends.map(({ kit }) => kit)))].sort(byCodeUnit);
      return {
        id: units[0] ?? '',
        units,
        ports: wired.sort((one, other) => byCodeUnit(one.id, other.id)),
        links: own,
        hubs: hubsAmong(index, { units, used, isOnIt: (port) => groups.of(port) === group }),
        radios: onIt
          .filter(({ port }) => port.protocol === 'wifi')
          .map(({ id }) => id)
          .sort(byCodeUnit),
      };
    })
    .sort((one, other) => byCodeUnit(one.id, other.id));
};
