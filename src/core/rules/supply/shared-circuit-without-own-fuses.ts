import type { BoatIndex } from '../../boat/boat-index.ts';
import { feedsOfOne } from '../../facts/supply-figures.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

/** Units and buses a circuit feeds straight, each once. */
const thingsOn = (index: BoatIndex, feeds: readonly string[]): string[] => [
  ...new Set(feeds.filter((target) => target.includes('.') || index.buses.has(target)).map(unitOf)),
];

/** A breaker for several units is too large for each of their wires and opens for all. */
export const sharedCircuitWithoutOwnFuses: Rule = {
  id: 'supply/shared-circuit-without-own-fuses',
  level: 'doubt',
  title: 'Units share a circuit and have no fuses of their own.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) =>
    plan.panels.flatMap(({ panel, circuits }) =>
      circuits.flatMap(({ circuit, ratingA, feeds }) => {
        const things = thingsOn(index, feeds);
        const own = index.panels.get(panel)?.circuits.find(({ id }) => id === circuit);
        if (things.length < 2 || own?.fusedEach === true) return [];
        return [
          {
            about: [circuit, panel, ...aFew(things)],
            says: `${someNames(things.map((id) => fedName(index, id)))} share the circuit ${circuit} of ${ratingA} A. A fault in one takes ${things.length === 2 ? 'both' : 'all'}, and the thinnest of their wires has ${ratingA} A behind it.`,
            measured: { value: things.length, unit: 'units' },
            limit: figurePart({ ...feedsOfOne, unit: 'units' }),
            cure: 'Put a fuse of its own in the lead of each, as its maker says; or give each a circuit.',
            cures: [
              {
                says: 'Each has a fuse of its own in its lead, or gets one.',
                edits: [{ edit: 'change-circuit', params: { panel, circuit, fusedEach: true } }],
              },
            ],
          },
        ];
      }),
    ),
};
