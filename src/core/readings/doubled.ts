import { byCodeUnit } from '../boat/ids.ts';
import { rememberFor } from '../boat/remember-for.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import type { Reaches } from './reaches.ts';

/** One reading, with one instance or none, that more than one unit sends on one bus. */
export interface DoubledSource {
  readonly bus: string;
  readonly reading: ReadingId;
  /** absent where the senders give no number */
  readonly instance?: number;
  /** `kit.port` of every sender, sorted */
  readonly ports: readonly string[];
}

const byPlace = (a: DoubledSource, b: DoubledSource): number =>
  byCodeUnit(a.bus, b.bus) || byCodeUnit(a.reading, b.reading) || (a.instance ?? -1) - (b.instance ?? -1);

const doubledIn = (reaches: Reaches): readonly DoubledSource[] => {
  const { buses } = reaches.network.index;
  const doubled = readingIds.flatMap((reading) => {
    const senders = new Map<string, DoubledSource & { readonly ports: string[]; readonly kit: Set<string> }>();
    for (const { node, signal } of reaches.of(reading).sent)
      for (const { net, talks } of node.memberships) {
        if (!talks || !buses.has(net.id) || node.port.protocol !== 'nmea2000') continue;
        const key = `${net.id} ${signal.instance}`;
        const instance = signal.instance === undefined ? {} : { instance: signal.instance };
        const entry = senders.get(key) ?? { bus: net.id, reading, ...instance, ports: [], kit: new Set<string>() };
        senders.set(key, entry);
        entry.kit.add(node.kit);
        if (!entry.ports.includes(node.id)) entry.ports.push(node.id);
      }
    return [...senders.values()]
      .filter(({ kit }) => kit.size > 1)
      .map(({ kit, ports, ...entry }) => ({ ...entry, ports: ports.sort(byCodeUnit) }));
  });
  return doubled.sort(byPlace);
};

/** Several rules and the settings ask for them, and none of it hangs on what is needed where. */
const kept = rememberFor({
  most: 1,
  keyOf: () => '',
  find: (_of: Reaches['of'], reaches: Reaches) => doubledIn(reaches),
});

/**
 * Readings that several units send on one bus with the same instance, or all without one; only what really leaves a
 * port counts, so a converter that is given nothing is no sender. Pure.
 */
export const doubledSources = (reaches: Reaches): readonly DoubledSource[] => kept(reaches.of, reaches);
