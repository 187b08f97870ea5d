import { fuseAgainstConductor } from '../../facts/fuses.ts';
import { fuseVerdict } from '../../power/fuse-verdict.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aboutFeed, amps, circuitName, fedName, laidWords, stands, wireWords } from './feed-words.ts';

/** The fuse protects the wire, not the unit: up to the wire’s own current it is right, up to half above it a doubt, beyond that the wire burns before the fuse opens. */
export const fuseOverWire: Rule = {
  id: 'power/fuse-over-wire',
  level: 'doubt',
  title: 'A fuse lets more through than its wire carries.',
  sources: ['choice-fuse-limit', 'cfr-33-183-455'],
  check: ({ index, plan }) =>
    plan.feeds.flatMap((feed) => {
      const { fuseA, ampacityA, loadA, nominalV } = feed;
      if (fuseA === undefined || ampacityA === undefined) return [];
      // A wire that carries less than the load itself is told of for that.
      if (stands(feed) && loadA > ampacityA) return [];
      const { verdict, pct } = fuseVerdict({ fuseA, conductorA: ampacityA, nominalV });
      if (verdict === 'ok') return [];
      const limit = fuseAgainstConductor[verdict === 'warn' ? 'warnAbove' : 'refuseAbove'];
      return [
        {
          about: aboutFeed(feed),
          level: verdict === 'warn' ? ('doubt' as const) : ('fault' as const),
          says: `${circuitName(index, feed)} lets ${amps(fuseA)} through to ${fedName(index, feed.to)}; ${wireWords(feed)} carries ${amps(ampacityA)}${laidWords(feed)}.`,
          measured: { value: pct, unit: limit.unit },
          limit: figurePart(limit),
          cure: `Fit a fuse of at most ${amps(ampacityA)} where the wire leaves the panel, or lay a thicker wire.`,
        },
      ];
    }),
};
