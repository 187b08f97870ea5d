import type { FeedEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';
import { aboutFeed, amps, area, fedName, volts } from './feed-words.ts';

const reasons: Partial<Record<NonNullable<FeedEntry['whyNot']>, (feed: FeedEntry) => string>> = {
  drop: ({ loadA, lengthM, allowedV, panel, areaMm2 }) =>
    allowedV > 0
      ? `${amps(loadA)} over ${metres(lengthM)} may lose ${volts(allowedV)}, and the thickest of the table loses more${areaMm2 === undefined ? '' : `; ${area(areaMm2)} keeps the share of the rules alone`}`
      : `panel ${panel} itself is at too few volts with everything drawing, so nothing may be lost on the way`,
  ampacity: ({ loadA, circuitA, carrying }) =>
    `none of the table carries ${amps(Math.max(loadA, circuitA))} for long with ${carrying} conductors in one bundle`,
  insulation: () => 'its insulation may not lie where it is led',
};

/** What a feed loses together with the lead of a steering drive is told of there. */
const sharesWithLead = ({ whyNot, leads = [] }: FeedEntry): boolean => whyNot === 'drop' && leads.length > 0;

const cures = {
  drop: 'Put a panel nearer to it, raise the volts of that panel with a thicker feeder, or choose a unit that stands fewer volts.',
  current: 'Lead it apart from the other feeds and outside the engine space, or split what it feeds over two circuits.',
} as const;

/** Where the way is so long, or the current so large, that no size of the table keeps what is allowed, the feed has to change. */
export const noWireDoes: Rule = {
  id: 'power/no-wire-does',
  level: 'fault',
  title: 'No wire does for a feed.',
  sources: ['choice-conductor-basis'],
  check: ({ index, plan }) => {
    // Behind a bank that cannot feed what hangs on it no wire does, and that is told of the bank.
    const dead = new Set(plan.supplies.flatMap(({ source, works }) => (works ? [] : [source])));
    const fromDead = new Set(plan.loads.flatMap(({ port, from = '' }) => (dead.has(from) ? [port] : [])));
    return plan.feeds.flatMap((feed) => {
      const why = feed.whyNot === undefined ? undefined : reasons[feed.whyNot];
      if (why === undefined || fromDead.has(feed.to) || sharesWithLead(feed)) return [];
      return [
        {
          about: aboutFeed(feed),
          says: `No wire does for ${fedName(index, feed.to)}: ${why(feed)}.`,
          ...(feed.whyNot === 'drop' && feed.dropV !== undefined ? { measured: { value: feed.dropV, unit: 'V' } } : {}),
          cure: cures[feed.whyNot === 'drop' ? 'drop' : 'current'],
        },
      ];
    });
  },
};
