import type { Observation, Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';
import { degreesWords, deviationPart, fedId, fedName, feedsApart } from './compass-words.ts';

/** Even a pair turns a card where it passes right beside it: how far depends on how far its wires lie apart. */
export const pairTooNear: Rule = {
  id: 'compass/pair-too-near',
  level: 'doubt',
  title: 'A feed laid as a pair passes right beside a compass.',
  sources: ['iso-25862', 'physics-wire-field', 'choice-wires-at-compass'],
  check: ({ index, plan }) =>
    plan.compass.flatMap((entry) =>
      entry.feeds
        .filter(({ laid, tooNear }) => laid === 'pair' && tooNear)
        .map((feed): Observation => {
          const { currentA, distanceM, fieldUt, deviationDeg, keepM } = feed;
          return {
            about: [entry.compass, fedId(feed)],
            apart: feedsApart(feed),
            says: `The feed of ${fedName(index, feed)} passes ${unitName(index, entry.compass)} at ${metres(distanceM)}: with ${currentA.toFixed(1)} A its two wires may make ${fieldUt.toFixed(2)} µT there and turn the card by ${degreesWords(deviationDeg)}, where ${degreesWords(entry.allowedDeg)} is allowed.`,
            ...deviationPart(entry, feed),
            cure: `Twist the two wires where they pass, or keep them ${metres(keepM)} off the compass. Then switch it on and watch the card.`,
          };
        }),
    ),
};
