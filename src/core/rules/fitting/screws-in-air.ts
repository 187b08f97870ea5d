import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { aboutFit, comesHere, isSet, mmWords, openingName } from './fit-words.ts';

/** A screw holds in solid panel only. */
export const screwsInAir: Rule = {
  id: 'fitting/screws-in-air',
  level: 'fault',
  title: 'A screw lands in a hole, or too near to the edge of one.',
  sources: ['choice-siting'],
  check: ({ index, plan }) =>
    plan.fits.flatMap((fit): Observation[] => {
      const lacking = isSet(fit) ? (fit.screws ?? []).filter(({ edgeMm, needMm }) => edgeMm < needMm) : [];
      const [worst] = lacking.toSorted((a, b) => a.edgeMm - b.edgeMm);
      if (worst === undefined) return [];
      const inAir = lacking.filter(({ edgeMm }) => edgeMm <= 0).length;
      const how = inAir > 0 ? `${inAir} of them in air` : `the nearest ${mmWords(worst.edgeMm)} from it`;
      return [
        {
          about: aboutFit(fit),
          says: `${lacking.length} ${lacking.length === 1 ? 'screw' : 'screws'} of ${comesHere(index, fit)} at ${openingName(index, fit.opening)} ${lacking.length === 1 ? 'lies' : 'lie'} too near to a hole, ${how}.`,
          measured: { value: worst.edgeMm, unit: 'mm' },
          limit: { ...limitPart(limitOf(index.boat, 'screw-to-edge')), value: worst.needMm, unit: 'mm' },
          cure: 'Set the unit in a plate over the hole, or back the panel where they go with a piece glued behind it.',
        },
      ];
    }),
};
