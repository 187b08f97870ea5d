import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const told = 4;

/** Units that usually meet the metal they stand on, on a hull of metal: one doubt for all that nobody has looked at. */
export const notLookedAt: Rule = {
  id: 'isolation/not-looked-at',
  level: 'doubt',
  title: 'On a hull of metal nobody has looked at what the metal of some units meets.',
  sources: ['practice-cautions'],
  check: ({ index, plan }) => {
    const { unknown } = plan.isolation;
    if (unknown.length === 0) return [];
    const names = unknown.slice(0, told).map((id) => unitName(index, id));
    const rest = unknown.length > told ? ` and ${unknown.length - told} more` : '';
    return [
      {
        // an id of a finding is to fit a line: the list of the plan names them all
        about: unknown.slice(0, 2),
        says: `Of ${unknown.length} of the units that usually touch metal nobody has said whether they join the minus to the hull: ${names.join(', ')}${rest}.`,
        measured: { value: unknown.length, unit: 'units' },
        cure: 'With its plugs pulled, measure from the minus lead of each to its case, and from its case to the hull: both open is well. Enter `mount` and, from its manual, `earthing`.',
      },
    ];
  },
};
