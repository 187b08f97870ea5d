import { BlockList, isIPv4 } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';
import { byCodeUnit } from '../../core/boat/ids.ts';

/** Where this machine stands in its networks now. */
export interface OwnAddresses {
  /** its IPv4 addresses in the networks it is in, itself aside */
  readonly addresses: readonly string[];
  /** every name and address by which a page of this machine may be asked for, in small letters */
  readonly hosts: ReadonlySet<string>;
  /** whether a sender is this machine or stands in one of its networks, with no router between */
  readonly isNear: (sender: string) => boolean;
}

const lookAgainMs = 2000;

/** `::ffff:192.0.2.7` is how a listener for both kinds of address writes 192.0.2.7. */
export const plainAddress = (address: string | undefined): string => (address ?? '').replace(/^::ffff:/, '');

/** Networks that people make at home and aboard come before those that programs make for themselves. */
const usualFirst = ['192.168.', '10.'];
const rankOf = (address: string): number => {
  const at = usualFirst.findIndex((begin) => address.startsWith(begin));
  return at < 0 ? usualFirst.length : at;
};
const byUse = (one: string, other: string): number => rankOf(one) - rankOf(other) || byCodeUnit(one, other);

const look = (names: readonly string[]): OwnAddresses => {
  const found = Object.values(networkInterfaces())
    .flatMap((cards) => cards ?? [])
    .filter(({ family }) => family === 'IPv4');
  const near = new BlockList();
  near.addSubnet('127.0.0.0', 8, 'ipv4');
  for (const { address, cidr } of found) near.addSubnet(address, Number(cidr?.split('/')[1] ?? 32), 'ipv4');
  const addresses = found.flatMap(({ internal, address }) => (internal ? [] : [address])).sort(byUse);
  return {
    addresses,
    hosts: new Set([...names, ...addresses, '127.0.0.1', 'localhost']),
    isNear: (sender) => isIPv4(sender) && near.check(sender, 'ipv4'),
  };
};

/** What the machine calls itself, alone and as it is announced on a small network. */
const ownNames = (): readonly string[] => {
  const name = hostname().toLowerCase();
  return /^[a-z0-9.-]+$/.test(name) ? [name, ...(name.includes('.') ? [] : [`${name}.local`])] : [];
};

/** Asks the system, again after two seconds: a laptop changes its network, and its address in one. */
export const ownAddresses = (nowMs: () => number): (() => OwnAddresses) => {
  const names = ownNames();
  let now = look(names);
  let lookedMs = nowMs();
  return () => {
    if (nowMs() - lookedMs < lookAgainMs) return now;
    now = look(names);
    lookedMs = nowMs();
    return now;
  };
};
