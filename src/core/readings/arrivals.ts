import type { BoatIndex } from '../boat/boat-index.ts';
import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { ReadingEntry } from '../plan-shape.ts';
import type { Reaches } from './reaches.ts';
import type { Refit } from './refit.ts';
import { type WayIn, waysInto } from './ways-in.ts';
import { whyNotOf } from './why-not.ts';

const trust = ['typical', 'manual', 'recording'] as const;

/** The shortest way from each further source that shares no unit with `by`, the screen aside. */
const backupsOf = (by: WayIn, ways: readonly WayIn[], at: string): string[][] => {
  const used = new Set(by.kit.filter((kit) => kit !== at));
  const bySource = new Map<string | undefined, WayIn>();
  for (const way of ways) {
    const [source] = way.kit;
    if (way !== by && source !== by.kit[0] && !bySource.has(source) && !way.kit.some((kit) => used.has(kit)))
      bySource.set(source, way);
  }
  return [...bySource.values()].map((way) => [...way.ports]);
};

const restsOn = (index: BoatIndex, way: WayIn): (typeof trust)[number] => {
  const ranks = way.kit.map((kit) => trust.indexOf(index.sheetOf.get(kit)?.source ?? 'typical'));
  return trust[Math.min(...ranks)] ?? 'typical';
};

const entryOf = (refit: Refit, reaches: Reaches, need: Need): ReadingEntry => {
  const { reading, instance, at, must } = need;
  const named = { reading, ...(instance === undefined ? {} : { instance }), at, must };
  const ways = waysInto(reaches, need);
  const [by] = ways;
  if (by === undefined)
    return { ...named, arrives: false, by: [], backups: [], whyNot: whyNotOf(refit, reaches, need) };
  return {
    ...named,
    arrives: true,
    rests: restsOn(refit.index, by),
    by: [...by.ports],
    backups: backupsOf(by, ways, at),
  };
};

const orderOf = (need: Need): string =>
  [need.must, need.everyMs ?? 0, need.reference ?? '', need.withOffset ?? ''].join(' ');

const inOrder = (a: Need, b: Need): number =>
  byCodeUnit(a.reading, b.reading) ||
  (a.instance ?? -1) - (b.instance ?? -1) ||
  byCodeUnit(a.at, b.at) ||
  byCodeUnit(orderOf(a), orderOf(b));

/**
 * Whether each reading that is needed gets to its screen in a phase, by which ports, what else could bring it, and
 * where it breaks if it does not. Needs at units that are not aboard then are left out.
 * Pure; sorted by reading, instance, screen.
 */
export const arrivals = (refit: Refit, phase: number): ReadingEntry[] => {
  const reaches = refit.reachesIn(phase);
  return refit.index.boat.needs
    .filter((need) => reaches.network.nodesOf.has(need.at))
    .sort(inOrder)
    .map((need) => entryOf(refit, reaches, need));
};
