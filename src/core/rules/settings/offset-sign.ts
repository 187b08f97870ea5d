import { siOf } from '../../fitting/settings/what-stands.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

/** A depth from the keel is wanted, and its offset stands with a plus: the screen shows more water than there is. */
export const offsetSign: Rule = {
  id: 'settings/offset-sign',
  level: 'danger',
  title: 'The offset to the keel has the wrong sign.',
  sources: ['practice-depth-settings'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    (index.boat.measures?.typed ?? []).flatMap((found) => {
      if (found.what !== 'depth-offset' || siOf(found) <= 0) return [];
      const own = plan.typed.filter(
        (entry) => entry.kit === found.unit && entry.what === 'depth-offset' && entry.setElsewhere === undefined,
      );
      const [first] = own;
      if (first === undefined || own.some(({ reference }) => reference !== 'keel')) return [];
      const wanted = first.is === undefined ? 'a minus' : metres(first.is);
      return [
        {
          about: [found.unit],
          says: `+${metres(siOf(found))} stands in ${unitName(index, found.unit)} as the offset to the keel, which is ${wanted}: it shows more water than there is.`,
          measured: { value: siOf(found), unit: 'm' },
          cure: 'To the keel the offset has a minus, to the surface a plus. Type it anew and prove it with a lead line.',
        },
      ];
    }),
};
