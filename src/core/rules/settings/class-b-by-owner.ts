import { ownSets } from '../../fitting/settings/own-sets.ts';
import { mayEnter } from '../../fitting/settings/who-may-enter.ts';
import type { Rule } from '../rule.ts';

/** The owner means to type what under this flag only an installer may. */
export const classBByOwner: Rule = {
  id: 'settings/class-b-by-owner',
  level: 'fault',
  title: 'The owner may not enter the static data of this AIS.',
  sources: ['cfr-80-231'],
  looksAt: 'whole-plan',
  check: ({ index }) => {
    const { flag, workBy } = index.boat.papers ?? {};
    if (flag === undefined || workBy !== 'owner') return [];
    return ownSets(index)
      .filter(({ unit, is }) => unit.fate === 'comes' && !mayEnter({ flag, is }, workBy))
      .map(({ unit }) => ({
        about: [unit.id],
        says: `${unit.name} comes, and its owner sets it up: under the flag ${flag} number, name and size of an AIS class B are entered by its vendor or by one who installs marine radios for a living, in no event by the user.`,
        cure: 'Let the vendor enter them when it is bought: the settings sheet has every figure ready. Or say that an installer does it.',
      }));
  },
};
