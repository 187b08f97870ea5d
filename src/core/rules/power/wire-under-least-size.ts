import { leastSize } from '../../power/least-size.ts';
import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { aboutFeed, area, fedName, stands, wireWords } from './feed-words.ts';

/** A thin conductor breaks where it is pulled and shaken long before it is warm: the rules name a least size whatever the current. */
export const wireUnderLeastSize: Rule = {
  id: 'power/wire-under-least-size',
  level: 'doubt',
  title: 'A wire that stands is thinner than the rules allow at all.',
  sources: ['cfr-33-183-425', 'iso-13297'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const { areaMm2, loadA, lengthM } = feed;
      if (!stands(feed) || feed.wire === 'bus-cable' || areaMm2 === undefined) return [];
      const least = leastSize({
        system: 'metric',
        sheathed: true,
        use: 'navigation-electronics',
        currentA: loadA,
        lengthMm: lengthM * 1000,
      });
      if (!least.binds || within({ value: Number(least.size), limit: areaMm2 })) return [];
      return [
        {
          about: aboutFeed(feed),
          says: `${fedName(index, feed.to)} hangs on ${wireWords(feed)}; the least a conductor in a sheath may have is ${area(Number(least.size))}.`,
          measured: { value: areaMm2, unit: 'mm²' },
          limit: { value: Number(least.size), unit: 'mm²', source: sourceWords(least.source) },
          cure: `Lay ${area(Number(least.size))} or more.`,
        },
      ];
    }),
};
