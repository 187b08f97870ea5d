import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { waysInWords } from './way-words.ts';

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** A converter in reach of a wifi of which nobody has said whether it writes; one that reaches a pilot is spoken of there. */
export const writesUnknown: Rule = {
  id: 'remote/writes-unknown',
  level: 'doubt',
  title: 'Nobody has said whether a converter in reach of wifi writes to the bus.',
  sources: ['practice-remote'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const toPilot = new Set(
      plan.remote.flatMap(({ commands }) =>
        commands.flatMap(({ what, through }) => (what === 'pilot' ? [through] : [])),
      ),
    );
    const open = plan.remote.flatMap((entry) =>
      entry.gates.flatMap(({ port, writes }) =>
        writes === 'unknown' && !toPilot.has(unitOf(port)) ? [{ kit: unitOf(port), entry }] : [],
      ),
    );
    return [...new Set(open.map(({ kit }) => kit))].map((kit) => {
      const entries = open.flatMap((one) => (one.kit === kit ? [one.entry] : []));
      return {
        about: [kit],
        says: `${unitName(index, kit)} is in reach of ${waysInWords(index, entries)}, and nobody has said whether it only listens: it is taken as able to write to whatever it is joined to.`,
        cure: 'Look in its settings: set it to listen only, or enter that it may write and who needs that.',
      };
    });
  },
};
