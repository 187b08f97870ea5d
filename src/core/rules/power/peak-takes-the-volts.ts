import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { aboutFeed, amps, fedName, volts } from './feed-words.ts';

/** A set that sends and a motor that starts draw their peak for moments; if the volts fall below what the unit stands, it restarts then. */
export const peakTakesTheVolts: Rule = {
  id: 'power/peak-takes-the-volts',
  level: 'doubt',
  title: 'A peak takes more volts than the unit can spare.',
  sources: ['choice-conductor-basis'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const { peakA, loadA, realDropV, atEndV, leastV } = feed;
      if (peakA === undefined || realDropV === undefined || atEndV === undefined || leastV === undefined) return [];
      const atPeakV = atEndV - (loadA > 0 ? (realDropV * (peakA - loadA)) / loadA : 0);
      if (atEndV < leastV || within({ value: leastV, limit: atPeakV })) return [];
      return [
        {
          about: aboutFeed(feed),
          says: `${fedName(index, feed.to)} draws ${amps(peakA)} for moments, and then gets ${volts(atPeakV)} of the ${leastV} V it needs.`,
          measured: { value: atPeakV, unit: 'V' },
          limit: { value: leastV, unit: 'V', source: `the sheet of ${fedName(index, feed.to)}` },
          cure: 'Lay the next thicker wire.',
        },
      ];
    }),
};
