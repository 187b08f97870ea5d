import { isAboard } from '../../boat/phase.ts';
import type { Rule } from '../rule.ts';

const says = {
  default: 'still has the password it was sold with; that stands in its manual, and whoever has read one is let in',
  none: 'has no password: whoever is in reach of it is let in',
} as const;

/** A unit with the password of its maker, or none. */
export const defaultPassword: Rule = {
  id: 'remote/default-password',
  level: 'fault',
  title: 'A unit has the password it was sold with, or none.',
  sources: ['practice-remote'],
  check: ({ index, plan }) =>
    index.boat.kit.flatMap((unit) => {
      const password = unit.remote?.password;
      if ((password !== 'default' && password !== 'none') || !isAboard(unit, plan.phase)) return [];
      return [
        {
          about: [unit.id],
          says: `${unit.name} ${says[password]}.`,
          cure: 'Give it a password of its own, write down who holds it, never the password, and change it whenever the boat or a fitter changes.',
        },
      ];
    }),
};
