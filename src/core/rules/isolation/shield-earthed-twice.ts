import type { Observation, Rule } from '../rule.ts';
import { capital, shieldName } from './shield-words.ts';

/** A shield earthed at two ends is a conductor between them, and the current in it is heard by what it should keep quiet. */
export const shieldEarthedTwice: Rule = {
  id: 'isolation/shield-earthed-twice',
  level: 'fault',
  title: 'A shield is earthed at more than one point.',
  sources: ['practice-shield', 'esd-can'],
  check: ({ index, plan }) =>
    plan.isolation.shields
      .filter(({ verdict }) => verdict === 'twice')
      .map((shield): Observation => {
        const { of, earths } = shield;
        const across = shield.kind === 'bus' && of.length > 1 ? ' A bridge carries it from one bus to the other.' : '';
        return {
          about: [...of, ...earths.map(({ at }) => at)],
          says: `${capital(shieldName(index, plan.joins, shield))} meets earth ${earths.map(({ says }) => says).join(' and ')}.${across} A current goes round through it, and the lines inside hear it.`,
          measured: { value: earths.length, unit: 'earths' },
          cure: `Keep one of the ${earths.length}, lift the others and insulate their ends. With the one lifted too, more than 1 Mohm must be left between shield and ground.`,
        };
      }),
};
