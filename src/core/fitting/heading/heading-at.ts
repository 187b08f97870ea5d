import { byCodeUnit } from '../../boat/ids.ts';
import type { CompassFeed } from '../../compass-shape.ts';
import { compassLimits } from '../../facts/compass-figures.ts';
import { headingClearanceM, headingSiting } from '../../facts/heading-figures.ts';
import type { HeadingNear, HeadingSite } from '../../heading-shape.ts';
import { compassDeviation } from '../../power/compass-deviation.ts';
import { distanceToRoute, type Spot } from '../../power/distance-to-route.ts';
import { feedsNear } from '../../power/feeds-near.ts';
import type { HeadingField } from './heading-field.ts';
import { steelAt } from './steel-at.ts';

/** How a heading sensor would stand at one spot. */
export interface HeadingAt extends Pick<HeadingSite, 'verdict' | 'sumDeg' | 'allowedDeg'> {
  /** everything near, what limits the spot most first */
  readonly near: readonly HeadingNear[];
  readonly feeds: readonly CompassFeed[];
}

type Distance = Pick<HeadingNear, 'is' | 'distanceM' | 'leastM' | 'by'>;

const verdictOf = ({ is, distanceM, leastM, by }: Distance): HeadingNear['verdict'] => {
  // an antenna has no iron to speak of: it disturbs while it sends
  if (is === 'radio-antenna') return distanceM < leastM ? 'doubtful' : 'good';
  if (by === 'taken') return distanceM < leastM ? 'doubtful' : 'good';
  // in one place two small things can still keep apart
  if (distanceM < leastM) return distanceM === 0 && leastM <= headingSiting.withinPlace.value ? 'doubtful' : 'not';
  return distanceM < leastM * headingSiting.doubtWithin.value ? 'doubtful' : 'good';
};

const rank = { not: 0, doubtful: 1, good: 2 } as const;

const byLimit = (one: HeadingNear, other: HeadingNear): number =>
  rank[one.verdict] - rank[other.verdict] ||
  one.distanceM / one.leastM - other.distanceM / other.leastM ||
  byCodeUnit(one.id, other.id);

const apartM = (a: Spot, b: Spot): number => Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);

const unitsNear = ({ obstacles }: HeadingField, at: Spot, except: string | undefined): HeadingNear[] =>
  obstacles
    .filter(({ id }) => id !== except)
    .map(({ at: there, ...obstacle }): HeadingNear => {
      const near = { ...obstacle, distanceM: apartM(at, there) };
      return { ...near, verdict: verdictOf(near) };
    });

/** Feeds that carry much, as things to keep from: the distance of installers goes before the field reckoned. */
const heavyFeeds = ({ feeds }: HeadingField, at: Spot): HeadingNear[] =>
  feeds
    .filter(({ feed }) => feed.loadA >= headingSiting.highCurrent.value)
    .map(({ feed, route }): HeadingNear => {
      const near = {
        id: feed.line,
        is: 'high-current' as const,
        distanceM: distanceToRoute(at, route),
        leastM: headingClearanceM('high-current'),
        by: 'kind' as const,
      };
      return { ...near, verdict: verdictOf(near) };
    });

/** What a feed takes of a spot by the field of its current alone. */
const turning = (feed: CompassFeed): HeadingNear => ({
  id: feed.line,
  is: 'high-current',
  distanceM: feed.distanceM,
  leastM: feed.keepM,
  by: 'kind',
  verdict: feed.laid === 'single' ? 'not' : 'doubtful',
});

/** All that turns a heading sensor at a spot, and whether it may stand there: a single thing decides, the worst of them. */
export const headingAt = (
  field: HeadingField,
  at: Spot,
  {
    except,
    steel = steelAt(field.hull, at),
  }: { readonly except?: string; readonly steel?: readonly HeadingNear[] } = {},
): HeadingAt => {
  const feeds = feedsNear(field.feeds, at, field.horizontalUt);
  const heavy = heavyFeeds(field, at);
  const told = new Set(heavy.filter(({ verdict }) => verdict !== 'good').map(({ id }) => id));
  const turned = feeds.filter(({ tooNear, line }) => tooNear && !told.has(line)).map(turning);
  const near = [...unitsNear(field, at, except), ...heavy, ...turned, ...steel].sort(byLimit);
  const sumUt = feeds.reduce((sum, { fieldUt }) => sum + fieldUt, 0);
  return {
    verdict: near[0]?.verdict ?? 'good',
    near,
    feeds,
    sumDeg: compassDeviation({ fieldUt: sumUt, horizontalUt: field.horizontalUt }).squareDeg,
    allowedDeg: compassLimits.steering.value / field.horizontalUt,
  };
};
