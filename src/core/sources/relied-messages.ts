import { byCodeUnit } from '../boat/ids.ts';
import { sentencePreference } from '../facts/conversion.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { PortNetwork, PortNode } from '../readings/port-network.ts';
import type { Signal } from '../readings/signal.ts';
import type { WayIn } from '../readings/ways-in.ts';
import type { ChosenSources } from './choose-sources.ts';

/** One reading that a screen takes from a port, and every message there that would do. */
interface Reliance {
  readonly reading: ReadingId;
  readonly at: string;
  readonly asBackup: boolean;
  readonly node: PortNode;
  readonly signals: readonly Signal[];
  readonly enoughMs: number | undefined;
}

/** A message that something needed relies on, at the port it leaves. */
export interface ReliedMessage {
  readonly node: PortNode;
  readonly message: number | string;
  readonly everyMs: number | undefined;
  /** the slowest that is enough for all who rely on it; undefined where nobody asks for a rate */
  readonly enoughMs: number | undefined;
  readonly readings: ReadonlySet<ReadingId>;
  readonly at: ReadonlySet<string>;
  readonly asBackup: boolean;
}

/** Languages in which single messages can be switched on and off. */
export const messagePorts: ReadonlySet<string> = new Set(['nmea2000', 'nmea0183', 'single-wire']);

const isSamePath = (one: WayIn, other: WayIn): boolean =>
  one.ports.length === other.ports.length && one.ports.every((port, at) => port === other.ports[at]);

/** What one way relies on: its own message at each port it leaves, and any other that comes the very same way. */
const reliancesOf = (
  network: PortNetwork,
  { need, ways }: ChosenSources,
  way: WayIn,
  asBackup: boolean,
): Reliance[] => {
  const same = ways.filter((other) => isSamePath(way, other));
  return way.ports.flatMap((port, at): Reliance[] => {
    const node = network.nodes.get(port);
    const leaves = at + 1 < way.ports.length && way.kit[at] !== way.kit[at + 1];
    if (node === undefined || !leaves || !messagePorts.has(node.port.protocol)) return [];
    const signals = same.flatMap(({ signals: all }) => all[at] ?? []).filter(({ message }) => message !== undefined);
    if (signals.length === 0) return [];
    const rates = same.flatMap(({ wanted }) => wanted.everyMs ?? []);
    const enoughMs = rates.length === 0 ? undefined : Math.min(...rates);
    return [{ reading: need.reading, at: need.at, asBackup, node, signals, enoughMs }];
  });
};

const preferenceOf = (reading: ReadingId, sentence: number | string | undefined): number => {
  const at = sentencePreference.get(reading)?.indexOf(String(sentence)) ?? -1;
  return at < 0 ? Number.MAX_SAFE_INTEGER : at;
};

/**
 * The one sentence of a line to be used for a reading, where several would do: the one preferred for it, else the one that
 * brings most of what is relied on there, else the first by its letters. Source: practice-converter.
 */
const sentenceFor = (reliance: Reliance, counts: ReadonlyMap<string, number>): Signal | undefined =>
  [...reliance.signals].sort(
    (a, b) =>
      preferenceOf(reliance.reading, a.message) - preferenceOf(reliance.reading, b.message) ||
      (counts.get(String(b.message)) ?? 0) - (counts.get(String(a.message)) ?? 0) ||
      byCodeUnit(String(a.message), String(b.message)),
  )[0];

/** A pilot wants APB and RMB both, and other ships come in several forms. Source: practice-pilot-sentences. */
const inEveryForm: ReadonlySet<ReadingId> = new Set([
  'route',
  'cross-track',
  'pilot-state',
  'pilot-command',
  'ais-targets',
]);

const signalsFor = (reliance: Reliance, counts: ReadonlyMap<string, number>): readonly Signal[] => {
  if (reliance.node.port.protocol === 'nmea2000' || inEveryForm.has(reliance.reading)) return reliance.signals;
  const one = sentenceFor(reliance, counts);
  return one === undefined ? [] : [one];
};

const countsOf = (reliances: readonly Reliance[]): ReadonlyMap<string, number> => {
  const readings = new Map<string, Set<ReadingId>>();
  for (const { reading, signals } of reliances)
    for (const { message } of signals)
      readings.set(String(message), (readings.get(String(message)) ?? new Set()).add(reading));
  return new Map([...readings].map(([message, own]) => [message, own.size]));
};

const fastest = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined ? b : b === undefined ? a : Math.min(a, b);

interface Open {
  node: PortNode;
  message: number | string;
  everyMs: number | undefined;
  enoughMs: number | undefined;
  readings: Set<ReadingId>;
  at: Set<string>;
  asBackup: boolean;
}

const gather = (reliances: readonly Reliance[]): ReliedMessage[] => {
  const counts = countsOf(reliances);
  const found = new Map<number | string, Open>();
  for (const reliance of reliances) {
    for (const { message, everyMs } of signalsFor(reliance, counts)) {
      if (message === undefined) continue;
      const { node } = reliance;
      const entry: Open = found.get(message) ?? {
        node,
        message,
        everyMs: undefined,
        enoughMs: undefined,
        readings: new Set(),
        at: new Set(),
        asBackup: true,
      };
      found.set(message, entry);
      entry.everyMs = fastest(entry.everyMs, everyMs);
      entry.enoughMs = fastest(entry.enoughMs, reliance.enoughMs);
      entry.readings.add(reliance.reading);
      entry.at.add(reliance.at);
      entry.asBackup = entry.asBackup && reliance.asBackup;
    }
  }
  return [...found.values()];
};

/**
 * Every message that something needed relies on, by the port it leaves: of the bus all that bring the reading the chosen way,
 * of a line of sentences one for each reading. Backups count too. Pure.
 */
export const reliedMessages = (
  network: PortNetwork,
  chosen: readonly ChosenSources[],
): ReadonlyMap<string, readonly ReliedMessage[]> => {
  const byPort = new Map<string, Reliance[]>();
  for (const entry of chosen) {
    const all = [
      ...reliancesOf(network, entry, entry.primary, false),
      ...entry.backups.flatMap(({ way }) => reliancesOf(network, entry, way, entry.chosen !== 'all')),
    ];
    for (const reliance of all) {
      const own = byPort.get(reliance.node.id);
      if (own === undefined) byPort.set(reliance.node.id, [reliance]);
      else own.push(reliance);
    }
  }
  return new Map([...byPort].map(([port, reliances]) => [port, gather(reliances)]));
};
