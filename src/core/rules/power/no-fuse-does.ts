import type { FeedEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { aboutFeed, amps, fedName } from './feed-words.ts';

const reasons: Partial<Record<NonNullable<FeedEntry['whyNot']>, (feed: FeedEntry) => string>> = {
  'no-rating': ({ loadA }) => `it draws ${amps(loadA)} for long, and no rating is made for that`,
  maker: ({ loadA }) => `it draws ${amps(loadA)} for long at the lowest volts, more than the fuse its maker states`,
  conductor: ({ loadA }) => `the wire behind it carries less than a fuse for ${amps(loadA)} needs`,
};

/** A fuse has to carry what the unit draws for long and yet open where its maker says; where no rating does both, one of the figures is wrong. */
export const noFuseDoes: Rule = {
  id: 'power/no-fuse-does',
  level: 'fault',
  title: 'No fuse does for a feed.',
  sources: ['practice-fuse-size', 'memory-fuse-steps'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const why = feed.whyNot === undefined ? undefined : reasons[feed.whyNot];
      if (why === undefined) return [];
      return [
        {
          about: aboutFeed(feed),
          says: `No fuse does for ${fedName(index, feed.to)}: ${why(feed)}.`,
          measured: { value: feed.loadA, unit: 'A' },
          cure: 'Look up the current and the fuse in its manual again; if both are right, feed it in two circuits.',
        },
      ];
    }),
};
