import { limitOf } from '../../boat/limit-of.ts';
import type { FeedEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { limitPart, metres, sourceWords } from '../rule-words.ts';
import { aboutFeed, fedName, losesTooMuch, stands, volts, wireWords } from './feed-words.ts';

/** Whether the unit itself goes short, and not the share of the rules alone. */
const starves = ({ allowedBy, atEndV, leastV }: FeedEntry): boolean =>
  allowedBy === 'unit' || (atEndV !== undefined && leastV !== undefined && atEndV < leastV);

/** A wire that lies aboard, or that a person settled, is held against the drop a new one would be picked for; a fault where the unit goes short. */
export const dropTooBig: Rule = {
  id: 'power/drop-too-big',
  level: 'doubt',
  title: 'A wire that stands loses more than it may.',
  sources: ['abyc-e11', 'choice-conductor-basis'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const { dropV, allowedV, allowedBy, nominalV, atEndV = 0, leastV = 0 } = feed;
      if (dropV === undefined || !stands(feed) || !losesTooMuch(feed)) return [];
      const share = limitOf(index.boat, 'feed-drop');
      const why =
        allowedBy === 'unit'
          ? `${volts(allowedV)} may be, or it falls below the ${leastV} V its maker asks for`
          : `${volts(allowedV)} may be, ${share.value} % of ${nominalV} V${starves(feed) ? `, and at the end it gets ${volts(atEndV)} of the ${leastV} V it needs` : ''}`;
      return [
        {
          about: aboutFeed(feed),
          level: starves(feed) ? ('fault' as const) : ('doubt' as const),
          says: `${volts(dropV)} are lost in ${wireWords(feed)} to ${fedName(index, feed.to)}, ${metres(feed.lengthM)} there; ${why}.`,
          measured: { value: dropV, unit: 'V' },
          limit:
            allowedBy === 'unit'
              ? { value: allowedV, unit: 'V', source: sourceWords('choice-conductor-basis') }
              : limitPart(share),
          cure: 'Lay a thicker wire, or feed it from a panel that is nearer.',
        },
      ];
    }),
};
