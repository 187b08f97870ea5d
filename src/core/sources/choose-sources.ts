import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { gatheredReadings } from '../facts/source-choice.ts';
import { compareNeeds } from '../readings/arrivals.ts';
import { chosenPrimary } from '../readings/chosen-primary.ts';
import type { Reaches } from '../readings/reaches.ts';
import { type WayIn, waysInto } from '../readings/ways-in.ts';
import type { Better, SourceEntry } from '../sources-shape.ts';
import { placeSum } from './place-sum.ts';
import { compareWays, type RankedWay, rankedWay, whyBetter } from './rank-ways.ts';

/** A need that is met, with the source that counts, those that stand by, and every way there is. */
export interface ChosenSources {
  readonly need: Need;
  readonly chosen: SourceEntry['chosen'];
  readonly because: Better | undefined;
  readonly primary: WayIn;
  /** best first, each with what it has before the one after it */
  readonly backups: readonly { readonly way: WayIn; readonly because: Better | undefined }[];
  readonly ways: readonly WayIn[];
}

/** A met need before one of its sources is taken: the best way of each source, best first. */
interface Open {
  readonly need: Need;
  readonly ways: readonly WayIn[];
  readonly all: readonly RankedWay[];
  readonly bySource: readonly RankedWay[];
}

const sourceOf = ({ way }: RankedWay): string => way.kit[0] ?? '';

const openOf = (reaches: Reaches, need: Need): Open[] => {
  const ways = waysInto(reaches, need);
  if (ways.length === 0) return [];
  const all = ways.map((way) => rankedWay(reaches.network, way)).sort(compareWays);
  const sources = new Map<string, RankedWay>();
  for (const ranked of all) if (!sources.has(sourceOf(ranked))) sources.set(sourceOf(ranked), ranked);
  return [{ need, ways, all, bySource: [...sources.values()] }];
};

const groupKey = ({ reading, instance }: Need): string => `${reading} ${instance ?? ''}`;

/**
 * The one source for a whole boat: that with the lowest sum of its places in the order at each screen. Where it does not come
 * in it counts as behind all sources there are, so that no poor source wins by reaching one screen more.
 */
const boatWide = (group: readonly Open[]): string | undefined => {
  const orders = group.map(({ bySource }) => bySource.map(sourceOf));
  const sums = [...new Set(orders.flat())].map((source) => ({ source, sum: placeSum({ orders, source }) }));
  return sums.sort((a, b) => a.sum - b.sum || byCodeUnit(a.source, b.source))[0]?.source;
};

const taken = (
  reaches: Reaches,
  { need, all, bySource }: Open,
  whole: string | undefined,
): readonly [SourceEntry['chosen'], RankedWay | undefined] => {
  const owner = chosenPrimary(reaches.network.index.boat, need);
  const own = owner === undefined ? undefined : all.find(({ way }) => way.ports[0] === owner.primary);
  if (own !== undefined) return [owner?.here === true ? 'owner-here' : 'owner-boat', own];
  if (bySource.length === 1) return ['only', bySource[0]];
  if (gatheredReadings.has(need.reading)) return ['all', bySource[0]];
  const best = bySource.find((ranked) => sourceOf(ranked) === whole);
  return best === undefined ? ['better', bySource[0]] : ['boat', best];
};

const chosenOf = (reaches: Reaches, open: Open, whole: string | undefined): ChosenSources[] => {
  const [chosen, primary] = taken(reaches, open, whole);
  if (primary === undefined) return [];
  const others = open.bySource.filter((ranked) => sourceOf(ranked) !== sourceOf(primary));
  const isOne = chosen !== 'all' && chosen !== 'only';
  const because = (one: RankedWay, next: RankedWay | undefined): Better | undefined =>
    !isOne || next === undefined ? undefined : whyBetter(one, next);
  return [
    {
      need: open.need,
      chosen,
      because: chosen === 'better' || chosen === 'boat' ? because(primary, others[0]) : undefined,
      primary: primary.way,
      backups: others.map((ranked, at) => ({ way: ranked.way, because: because(ranked, others[at + 1]) })),
      ways: open.ways,
    },
  ];
};

/**
 * For every need that is met the source that counts and those that stand by: the person’s choice; else, of a reading that
 * several screens take from several sources, one for the whole boat; else the better one. Pure; sorted as the needs are by
 * reading, instance, unit.
 */
export const chooseSources = (reaches: Reaches): ChosenSources[] => {
  const { nodesOf, index } = reaches.network;
  const open = index.boat.needs
    .filter(({ at }) => nodesOf.has(at))
    .sort(compareNeeds)
    .flatMap((need) => openOf(reaches, need));
  const groups = new Map<string, Open[]>();
  for (const entry of open) groups.set(groupKey(entry.need), [...(groups.get(groupKey(entry.need)) ?? []), entry]);
  const whole = new Map([...groups].map(([key, group]) => [key, group.length < 2 ? undefined : boatWide(group)]));
  return open.flatMap((entry) => chosenOf(reaches, entry, whole.get(groupKey(entry.need))));
};
