import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';
import { badChecks, measuredPart } from './sensor-words.ts';

/** Behind or beside a propeller the water is full of air, and a sounder hears only that. */
export const nearThePropeller: Rule = {
  id: 'sensors/near-the-propeller',
  level: 'doubt',
  title: 'A sensor in the hull sits too near to the propeller, or behind it.',
  sources: ['practice-transducer-place'],
  check: ({ index, plan }) =>
    badChecks({ plan }, 'ahead-of-propeller').map(({ site, check }) => {
      const { measured = 0, limit = 0 } = check;
      const where = measured < 0 ? `${metres(-measured)} behind` : `${metres(measured)} ahead of`;
      return {
        about: [site.unit],
        says: `${unitName(index, site.unit)} sits ${where} the propeller; a tenth of the waterline ahead, ${metres(limit)}, is asked for.`,
        ...measuredPart(check),
        cure: 'Put it farther forward, where the hull is still in smooth water at every speed. Where it must stay, see at sea up to which speed it reads.',
      };
    }),
};
