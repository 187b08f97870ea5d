import { UserError } from '../core/boat/user-error.ts';
import type { LiveSource } from '../live/live-source.ts';
import { serialSource } from '../live/sources/serial-source.ts';
import { streamSource } from '../live/sources/stream-source.ts';
import { tailSource } from '../live/sources/tail-source.ts';
import { tcpSource } from '../live/sources/tcp-source.ts';
import { udpSource, usualUdpPort } from '../live/sources/udp-source.ts';

/** Where to listen, as typed: exactly one of them. */
export interface SourceOptions {
  /** a port, or true for the usual one */
  readonly udp?: string | true;
  readonly bind?: string;
  readonly tcp?: string;
  readonly serial?: string;
  readonly baud?: string;
  readonly stdin?: boolean;
  readonly tail?: string;
}

const whole = (text: string, { most, what }: { most: number; what: string }): number => {
  const number = Number(text);
  if (Number.isInteger(number) && number >= 1 && number <= most) return number;
  throw new UserError({
    says: `${what} is a whole number from 1 to ${most}.`,
    place: text,
    whatToDo: 'Give it in figures.',
  });
};

/** `192.168.1.20:10110`, `gateway:10110` or `[fe80::1]:10110` */
const hostAndPort = (text: string): { host: string; port: number } => {
  const [, six, name, port] = /^(?:\[([0-9a-fA-F:.%a-z]+)\]|([^:\s]+)):(\d+)$/.exec(text) ?? [];
  const host = six ?? name;
  if (host !== undefined && port !== undefined) return { host, port: whole(port, { most: 65_535, what: 'A port' }) };
  throw new UserError({
    says: 'This is no address with a port.',
    place: text,
    whatToDo: 'Give it as --tcp 192.168.1.20:10110.',
  });
};

const made = (options: SourceOptions): LiveSource[] => {
  const { udp, bind, tcp, serial, baud, stdin, tail } = options;
  const sources: LiveSource[] = [];
  if (udp !== undefined) {
    const port = udp === true ? usualUdpPort : whole(udp, { most: 65_535, what: 'A port' });
    sources.push(udpSource({ port, address: bind }));
  }
  if (tcp !== undefined) sources.push(tcpSource(hostAndPort(tcp)));
  if (serial !== undefined) {
    const speed = baud === undefined ? undefined : whole(baud, { most: 4_000_000, what: 'A speed' });
    sources.push(serialSource({ path: serial, baud: speed }));
  }
  if (stdin === true) sources.push(streamSource(process.stdin));
  if (tail !== undefined) sources.push(tailSource(tail));
  return sources;
};

/** The one source that is to be listened to. */
export const listenSource = (options: SourceOptions): LiveSource => {
  const [source, ...more] = made(options);
  if (source !== undefined && more.length === 0) return source;
  throw new UserError({
    says: source === undefined ? 'Nobody said where to listen.' : 'One place to listen to is enough.',
    whatToDo: 'Give one of --udp, --tcp HOST:PORT, --serial PATH, --stdin or --tail PATH.',
  });
};
