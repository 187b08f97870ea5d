import type { BoatIndex } from '../boat/boat-index.ts';
import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { rememberFor } from '../boat/remember-for.ts';
import type { ReadingEntry } from '../plan-shape.ts';
import { chosenPrimary } from './chosen-primary.ts';
import { formOf } from './form-of.ts';
import type { Reaches } from './reaches.ts';
import type { Refit } from './refit.ts';
import { askedBy, type WayIn, waysInto } from './ways-in.ts';
import { whyNotOf } from './why-not.ts';
import type { WhyNot } from './why-words.ts';

/** Whether a reading arrives, before anything is said of cures that were tried. */
export type Arrival = Omit<ReadingEntry, 'whyNot'> & { readonly whyNot?: WhyNot };

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

/** Whether a recording heard the reading leave a port on this way. */
const isProved = ({ boat }: BoatIndex, { reading, instance }: Need, { ports }: WayIn): boolean =>
  (boat.proof?.proved ?? []).some(
    (entry) =>
      entry.reading === reading &&
      (entry.instance === undefined || instance === undefined || entry.instance === instance) &&
      ports.includes(entry.from),
  );

const restsOn = (index: BoatIndex, need: Need, way: WayIn): (typeof trust)[number] | 'proved' => {
  if (isProved(index, need, way)) return 'proved';
  const ranks = way.kit.map((kit) => trust.indexOf(index.sheetOf.get(kit)?.source ?? 'typical'));
  return trust[Math.min(...ranks)] ?? 'typical';
};

interface Asked {
  readonly index: BoatIndex;
  readonly reaches: Reaches;
  readonly need: Need;
  /** the port from which the person wants it */
  readonly chosen: string | undefined;
}

/** How a reading arrives, as far as it does: by a way, on what that rests, and what else could bring it. */
const arrivalOf = ({
  index,
  reaches,
  need,
  chosen,
}: Asked): Pick<Arrival, 'rests' | 'by' | 'forms' | 'backups'> | undefined => {
  const ways = waysInto(reaches, need);
  const by = ways.find(({ ports }) => ports[0] === chosen) ?? ways[0];
  if (by === undefined) return undefined;
  return {
    rests: restsOn(index, need, by),
    by: [...by.ports],
    forms: by.signals.map(formOf),
    backups: backupsOf(by, ways, need.at),
  };
};

/** After an edit of one need the others arrive as they did. */
const arrivalKept = rememberFor({
  most: 2000,
  keyOf: ({ need, chosen = '' }: Asked) => `${askedBy(need)} ${chosen}`,
  find: (_of: Reaches['of'], asked) => arrivalOf(asked),
});

const entryOf = (refit: Refit, reaches: Reaches, need: Need): Arrival => {
  const { index } = refit;
  const { reading, instance, at, must } = need;
  const named = { reading, ...(instance === undefined ? {} : { instance }), at, must };
  const chosen = chosenPrimary(index.boat, need)?.primary;
  const arrival = arrivalKept(reaches.of, { index, reaches, need, chosen });
  if (arrival === undefined)
    return { ...named, arrives: false, by: [], backups: [], whyNot: whyNotOf(refit, reaches, need) };
  return { ...named, arrives: true, ...arrival };
};

const orderOf = (need: Need): string =>
  [need.must, need.everyMs ?? 0, need.reference ?? '', need.withOffset ?? ''].join(' ');

/** By reading, instance, screen, then by what is asked of it. */
export const compareNeeds = (a: Need, b: Need): number =>
  byCodeUnit(a.reading, b.reading) ||
  (a.instance ?? -1) - (b.instance ?? -1) ||
  byCodeUnit(a.at, b.at) ||
  byCodeUnit(orderOf(a), orderOf(b));

/** A need as one word, to look it up by. */
export const needKey = ({ reading, instance, at }: Pick<Need, 'reading' | 'instance' | 'at'>): string =>
  `${reading} ${instance ?? ''} ${at}`;

/** The needs that are met in a phase, by `needKey`: what `arrivals` says, without how and why. */
export const arrivedIn = (refit: Refit, phase: number): ReadonlySet<string> => {
  const reaches = refit.reachesIn(phase);
  const met = refit.index.boat.needs.filter(
    (need) => reaches.network.nodesOf.has(need.at) && waysInto(reaches, need).length > 0,
  );
  return new Set(met.map(needKey));
};

/**
 * Whether each reading that is needed gets to its screen in a phase, by which ports, what else could bring it, and
 * where it breaks if it does not. Needs at units that are not aboard then are left out.
 * Pure; sorted by reading, instance, screen.
 */
export const arrivals = (refit: Refit, phase: number): Arrival[] => {
  const reaches = refit.reachesIn(phase);
  return refit.index.boat.needs
    .filter((need) => reaches.network.nodesOf.has(need.at))
    .sort(compareNeeds)
    .map((need) => entryOf(refit, reaches, need));
};
