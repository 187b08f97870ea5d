import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { aboutFeed, amps, fedName, laidWords, stands, wireWords } from './feed-words.ts';

/** What a wire carries for long depends on its insulation, the engine space and the bundle it lies in; above it the insulation cooks. */
export const wireOverItsCurrent: Rule = {
  id: 'power/wire-over-its-current',
  level: 'fault',
  title: 'A wire that stands carries more than it may for long.',
  sources: ['cfr-33-183-425', 'memory-iso-ampacity'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const { loadA, ampacityA } = feed;
      if (!stands(feed) || ampacityA === undefined || within({ value: loadA, limit: ampacityA })) return [];
      return [
        {
          about: aboutFeed(feed),
          says: `${fedName(index, feed.to)} draws ${amps(loadA)} for long at the lowest volts; ${wireWords(feed)} carries ${amps(ampacityA)}${laidWords(feed)}.`,
          measured: { value: loadA, unit: 'A' },
          limit: { value: ampacityA, unit: 'A', source: sourceWords('cfr-33-183-425') },
          cure: 'Lay a thicker wire; until then do not use it for long.',
        },
      ];
    }),
};
