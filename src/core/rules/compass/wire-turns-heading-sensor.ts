import { compassLimits } from '../../facts/compass-figures.ts';
import { headingSiting } from '../../facts/heading-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';
import { degreesWords, fedId, fedName, feedsApart } from './compass-words.ts';
import { magneticSites } from './heading-words.ts';

/** A feed that turns a heading sensor turns it only while it carries current: at night, on the pump, with each push of a thruster. */
export const wireTurnsHeadingSensor: Rule = {
  id: 'compass/wire-turns-heading-sensor',
  level: 'doubt',
  title: 'A feed passes so near to a heading sensor that its current turns it.',
  sources: ['iso-25862', 'physics-wire-field', 'choice-wires-at-compass'],
  check: ({ index, plan }) =>
    magneticSites({ plan }).flatMap(({ site, heading }) =>
      heading.feeds
        .filter(({ tooNear }) => tooNear)
        .map((feed): Observation => {
          const single = feed.laid === 'single';
          return {
            about: [site.unit, fedId(feed)],
            apart: feedsApart(feed),
            ...(single || feed.currentA >= headingSiting.highCurrent.value ? { level: 'fault' } : {}),
            says: `The feed of ${fedName(index, feed)} passes ${unitName(index, site.unit)} at ${metres(feed.distanceM)}${single ? ' as a single wire' : ''}: ${feed.currentA.toFixed(1)} A turn it by up to ${degreesWords(feed.deviationDeg)}, where ${degreesWords(heading.allowedDeg)} is allowed for a compass.`,
            measured: { value: feed.deviationDeg, unit: '°' },
            limit: { value: heading.allowedDeg, unit: '°', source: sourceWords(compassLimits.steering.source) },
            cure: `${single ? 'Lead plus and minus side by side, twisted where they pass it' : 'Twist the two wires where they pass it'}, or keep them ${metres(feed.keepM)} off. Then switch it on and watch the heading.`,
          };
        }),
    ),
};
