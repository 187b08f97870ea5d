import { headingSiting } from '../../facts/heading-figures.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import type { Spot } from '../../power/distance-to-route.ts';
import { feedAtCompass } from '../../power/feed-at-compass.ts';
import type { FeedRoute } from '../../power/feeds-near.ts';
import { headingAt } from './heading-at.ts';
import type { HeadingField } from './heading-field.ts';

interface Reach {
  readonly feed: FeedRoute;
  readonly low: Spot;
  readonly high: Spot;
}

const spotOf = (of: (key: keyof Spot) => number): Spot => ({ xM: of('xM'), yM: of('yM'), zM: of('zM') });

/** The box outside which a feed turns nothing by more than it may: so most are told off by six comparisons. */
const reachOf = (feed: FeedRoute, horizontalUt: number): Reach => {
  const keepM = feedAtCompass({ ...feed, distanceM: 1, horizontalUt }).keepM;
  const heavyM = feed.feed.loadA >= headingSiting.highCurrent.value ? headingSiting.doubtWithin.value : 0;
  const reachM = Math.max(keepM, heavyM);
  return {
    feed,
    low: spotOf((key) => Math.min(...feed.route.map((at) => at[key])) - reachM),
    high: spotOf((key) => Math.max(...feed.route.map((at) => at[key])) + reachM),
  };
};

const isWithin = ({ low, high }: Reach, { xM, yM, zM }: Spot): boolean =>
  xM >= low.xM && xM <= high.xM && yM >= low.yM && yM <= high.yM && zM >= low.zM && zM <= high.zM;

/** Judges spots of one boat quickly: only what is near enough to count is weighed, by the very rules of a single spot. */
export const headingJudge = (field: HeadingField, except?: string): ((at: Spot) => HeadingNear | undefined) => {
  const reaches = field.feeds.map((feed) => reachOf(feed, field.horizontalUt));
  const doubt = headingSiting.doubtWithin.value;
  const unitless = field.obstacles.filter(({ id }) => id !== except);
  return (at) => {
    const obstacles = unitless.filter(
      ({ at: there, leastM }) => Math.hypot(at.xM - there.xM, at.yM - there.yM, at.zM - there.zM) < leastM * doubt,
    );
    const feeds = reaches.filter((reach) => isWithin(reach, at)).map(({ feed }) => feed);
    const [worst] = headingAt({ ...field, obstacles, feeds }, at).near;
    return worst === undefined || worst.verdict === 'good' ? undefined : worst;
  };
};
