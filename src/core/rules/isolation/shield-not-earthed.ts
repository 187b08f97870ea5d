import type { Observation, Rule } from '../rule.ts';
import { capital, shieldName } from './shield-words.ts';

/** A shield that hangs free is an antenna beside the wires it should keep quiet. */
export const shieldNotEarthed: Rule = {
  id: 'isolation/shield-not-earthed',
  level: 'doubt',
  title: 'A shield is earthed nowhere.',
  sources: ['practice-shield'],
  check: ({ index, plan }) =>
    plan.isolation.shields
      .filter(({ verdict }) => verdict === 'nowhere')
      .map(
        (shield): Observation => ({
          about: shield.of,
          says: `${capital(shieldName(index, plan.joins, shield))} is earthed nowhere, so it keeps nothing out.`,
          cure:
            shield.kind === 'bus'
              ? 'Earth it at one point, where the bus is fed, and carry it through insulated everywhere else.'
              : 'Earth it at one end only, that of the unit that talks.',
        }),
      ),
};
