import { metNeeds } from '../../readings/met-needs.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** True wind worked out with speed over the ground is wrong by the stream, in strength and in direction. */
export const trueWindFromGround: Rule = {
  id: 'readings/true-wind-from-ground',
  level: 'doubt',
  title: 'True wind is worked out without speed through the water.',
  sources: ['practice-derived-readings'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) =>
    metNeeds(reaches, ({ reading }) => reading === 'wind-true')
      .filter(({ ways }) =>
        // who asks for ground has chosen it; who asks for water and gets ground is told so as a fault
        ways.every(({ signal, wanted }) => signal.reference === 'ground' && wanted.references.length === 0),
      )
      .map(({ need, ways: [{ ports }] }) => {
        const maker = unitName(index, ports[0] ?? need.at);
        const screen = unitName(index, need.at);
        const by = maker === screen ? 'there' : `by ${maker}`;
        return {
          about: [need.at, ...ports],
          says: `True wind at ${screen} is worked out ${by} with speed over the ground; no speed through the water reaches ${maker}. In a stream it is wrong by the stream.`,
          cure: `Add a log, or bring the one aboard to ${maker}. Without one, read it as wind over the ground.`,
        };
      }),
};
