import { compassLimits } from '../../facts/compass-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';
import { degreesWords, deviationPart, fedId, fedName, feedsApart } from './compass-words.ts';

/** A wire whose return goes another way is a loop round the boat, and turns a compass from metres away. */
export const singleWireNear: Rule = {
  id: 'compass/single-wire-near',
  level: 'fault',
  title: 'A feed runs near a compass without its return beside it.',
  sources: ['iso-25862', 'physics-wire-field', 'choice-wires-at-compass'],
  check: ({ index, plan }) =>
    plan.compass.flatMap((entry) =>
      entry.feeds
        .filter(({ laid }) => laid === 'single')
        .map((feed): Observation => {
          const { currentA, distanceM, fieldUt, deviationDeg, keepM, tooNear } = feed;
          return {
            about: [entry.compass, fedId(feed)],
            apart: feedsApart(feed),
            ...(tooNear || distanceM < compassLimits.unknownItemWarnBelow.value ? {} : { level: 'advice' }),
            says: `The feed of ${fedName(index, feed)} passes ${unitName(index, entry.compass)} at ${metres(distanceM)} as a single wire: ${currentA.toFixed(1)} A make ${fieldUt.toFixed(2)} µT there and turn the card by up to ${degreesWords(deviationDeg)}, where ${degreesWords(entry.allowedDeg)} is allowed.`,
            ...deviationPart(entry, feed),
            cure: `Lead plus and minus side by side all the way, twisted where they pass the compass. A single wire would have to keep ${metres(keepM)} off. Swing the compass afterwards.`,
          };
        }),
    ),
};
