import { typedSettings } from '../../facts/typed-settings.ts';
import { unitSlip } from '../../fitting/settings/feet-for-metres.ts';
import { siOf } from '../../fitting/settings/what-stands.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

const slipWords = {
  'feet-as-metres': 'about 3.28 times that: feet typed as metres?',
  'metres-as-feet': 'about a third of that: metres typed as feet?',
} as const;

/** What stands in a unit looks as if it was typed in the wrong unit of length. */
export const feetForMetres: Rule = {
  id: 'settings/feet-for-metres',
  level: 'doubt',
  title: 'A value looks like feet typed as metres.',
  sources: ['choice-feet-for-metres'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    (index.boat.measures?.typed ?? []).flatMap((found) => {
      const entry = plan.typed.find(
        ({ kit, what, stands }) => kit === found.unit && what === found.what && stands !== undefined,
      );
      const isLength = found.in === 'm' || found.in === 'ft' || found.in === 'fm';
      if (entry?.is === undefined || entry.stands?.agrees === true || !isLength) return [];
      const slip = unitSlip({ typedM: siOf(found), wantedM: entry.is });
      if (slip === undefined) return [];
      return [
        {
          about: [found.unit],
          apart: [found.what],
          says: `${found.figure} ${found.in} stands in ${unitName(index, found.unit)} as ${typedSettings[found.what].name}; by her measures it is ${metres(entry.is)}. It is ${slipWords[slip]}`,
          measured: { value: siOf(found), unit: 'm' },
          cure: 'Look what unit that screen counts in, and type it anew.',
        },
      ];
    }),
};
