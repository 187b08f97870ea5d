import { lastPhase } from '../../boat/phase.ts';
import { networksOf } from '../../joins/networks.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const makerOf = (dialect: string): string => dialect.split('/')[0] ?? dialect;

/** Two makers' own languages on one switch do not talk to each other, and may hand out addresses against each other. */
export const languagesSideBySide: Rule = {
  id: 'network/languages-side-by-side',
  level: 'doubt',
  title: 'Units of two makers’ own network languages share a switch.',
  sources: ['practice-ethernet'],
  check: ({ index, plan }) =>
    networksOf(index, lastPhase(index.boat), plan.joins).flatMap(({ ports, units }) => {
      const speaking = ports.filter(({ kit, port }) => port.dialect !== undefined && units.includes(kit));
      const makers = new Set(speaking.map(({ port }) => makerOf(port.dialect ?? '')));
      if (makers.size < 2) return [];
      return [
        {
          about: speaking.map(({ kit }) => kit),
          says: `${[...new Set(speaking.map(({ id }) => unitName(index, id)))].join(', ')} speak ${makers.size} makers’ own languages on one network. They do not understand each other, and each may hand out addresses of its own.`,
          cure: 'Keep each language on a switch of its own, unless both manuals say that they live together.',
        },
      ];
    }),
};
