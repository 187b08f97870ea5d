import { byCodeUnit } from '../boat/ids.ts';
import { limitValue } from '../boat/limit-value.ts';
import { numberedReadings } from '../facts/numbered-readings.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import type { PortNetwork, PortNode } from '../readings/port-network.ts';
import { type Step, stepsOf } from '../readings/reach.ts';
import type { Reaches } from '../readings/reaches.ts';
import type { NumberEntry } from '../sources-shape.ts';

/** One engine, tank or battery, and the port at which it first comes onto a bus. */
interface Numbered {
  /** tells one thing from another of the same sensor */
  readonly thing: string;
  readonly source: PortNode;
  readonly port: PortNode;
  readonly now: number | undefined;
  readonly setBy: NumberEntry['setBy'];
}

const isBus = ({ port }: PortNode): boolean => port.protocol === 'nmea2000';

/** A unit sets one number for a reading at a port; where it gives several there each belongs to an input of it. */
const numberedOf = (steps: readonly Step[]): Numbered[] => {
  const found = new Map<string, Omit<Numbered, 'setBy'>>();
  for (const step of steps) {
    const way = stepsOf(step);
    const first = way.find(({ node }) => isBus(node));
    if (first === undefined || !first.node.memberships.some(({ talks }) => talks)) continue;
    const now = first.signal.instance;
    const thing = `${step.source.id} ${way[0]?.signal.instance ?? ''}`;
    const key = `${first.node.id} ${thing}`;
    if (!found.has(key)) found.set(key, { thing, source: step.source, port: first.node, now });
  }
  const all = [...found.values()];
  const isAlone = (one: (typeof all)[number]): boolean => all.filter(({ port }) => port === one.port).length === 1;
  return all.map((one) => ({ ...one, setBy: isAlone(one) ? 'unit' : 'input' }));
};

/** From port to starboard, then from the bow aft, then by id. */
const byPlace =
  ({ index }: PortNetwork) =>
  (a: Numbered, b: Numbered): number => {
    const [at, other] = [a, b].map(({ source }) => index.places.get(index.kit.get(source.kit)?.place ?? ''));
    return (
      (at?.yM ?? 0) - (other?.yM ?? 0) ||
      (other?.xM ?? 0) - (at?.xM ?? 0) ||
      byCodeUnit(a.source.id, b.source.id) ||
      byCodeUnit(a.port.id, b.port.id) ||
      (a.now ?? -1) - (b.now ?? -1)
    );
  };

/** A unit this far off the middle of the boat is of one side. */
const sideM = 0.2;

/** Whether two engines are numbered the other way round than port 0, starboard 1 (source: practice-engine-numbers). */
const isCrossed = (network: PortNetwork, reading: ReadingId, inOrder: readonly Numbered[]): boolean => {
  const [port, starboard] = inOrder;
  if ((reading !== 'engine' && reading !== 'transmission') || inOrder.length !== 2) return false;
  const yM = ({ source }: Numbered): number =>
    network.index.places.get(network.index.kit.get(source.kit)?.place ?? '')?.yM ?? 0;
  if (port === undefined || starboard === undefined || yM(port) > -sideM || yM(starboard) < sideM) return false;
  return port.now === 1 && starboard.now === 0 && port.setBy === 'unit' && starboard.setBy === 'unit';
};

const proposalsFor = (network: PortNetwork, reading: ReadingId, numbered: readonly Numbered[]): NumberEntry[] => {
  const isTank = reading === 'fuel-level' || reading === 'water-level';
  const most = isTank ? limitValue(network.index.boat, 'tank-number-most') : 252;
  const inOrder = [...numbered].sort(byPlace(network));
  const named = ({ source, port, now, setBy }: Numbered) => ({
    reading,
    source: source.id,
    port: port.id,
    ...(now === undefined ? {} : { now }),
    setBy,
  });
  if (isCrossed(network, reading, inOrder))
    return inOrder.map((one, proposed) => ({ ...named(one), proposed, why: 'side' as const }));
  // One thing on two buses keeps one number; what is set in inputs is the harder to change, so it keeps its own first.
  const holders = new Map<number, string>();
  const kept = new Set<Numbered>();
  const keepOf = (setBy: Numbered['setBy']): void => {
    for (const one of inOrder) {
      if (one.setBy !== setBy || one.now === undefined || one.now > most) continue;
      const holder = holders.get(one.now);
      if (holder !== undefined && holder !== one.thing) continue;
      holders.set(one.now, one.thing);
      kept.add(one);
    }
  };
  keepOf('input');
  keepOf('unit');
  const freeFor = (thing: string): number => {
    const own = [...holders].find(([, holder]) => holder === thing)?.[0];
    const lowest = [...Array(holders.size + 1).keys()].find((number) => !holders.has(number)) ?? holders.size;
    holders.set(own ?? lowest, thing);
    return own ?? lowest;
  };
  return inOrder.map((one) => {
    if (kept.has(one)) return { ...named(one), proposed: one.now ?? 0, why: 'stands' as const };
    const why = one.now === undefined ? 'none' : one.now > most ? 'too-high' : 'clash';
    const proposed = freeFor(one.thing);
    // where all low numbers are taken a high one is as good as any
    return { ...named(one), proposed, why: proposed === one.now ? 'stands' : why };
  });
};

/**
 * A number for every engine, gearbox, tank, battery, charger and AC supply that comes onto a bus: its own where no other has
 * it, else the lowest that is free, from port to starboard and from the bow aft. Two engines side by side are 0 to port and
 * 1 to starboard. Numbers of one reading are unique in the whole boat. Pure; sorted by reading, source, port.
 */
export const numberEntries = (reaches: Reaches): NumberEntry[] =>
  readingIds
    .filter((reading) => numberedReadings.has(reading))
    .flatMap((reading) => proposalsFor(reaches.network, reading, numberedOf(reaches.of(reading).sent)))
    .sort(
      (a, b) =>
        byCodeUnit(a.reading, b.reading) ||
        byCodeUnit(a.source, b.source) ||
        byCodeUnit(a.port, b.port) ||
        (a.now ?? -1) - (b.now ?? -1),
    );
