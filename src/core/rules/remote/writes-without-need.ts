import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { waysInWords } from './way-words.ts';

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** No message on the bus says who sent it: a converter that may write can be made to say anything. */
export const writesWithoutNeed: Rule = {
  id: 'remote/writes-without-need',
  level: 'doubt',
  title: 'A converter in reach of wifi writes to the bus, and nobody needs that.',
  sources: ['practice-remote'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const toPilot = new Set(plan.remote.flatMap(({ commands }) => commands.map(({ through }) => through)));
    const open = plan.remote.flatMap((entry) =>
      entry.gates.flatMap(({ port, writes }) => {
        const kit = unitOf(port);
        const isNeeded = index.kit.get(kit)?.remote?.mustWrite === true;
        return writes !== 'may-write' || isNeeded || toPilot.has(kit) ? [] : [{ kit, entry }];
      }),
    );
    return [...new Set(open.map(({ kit }) => kit))].map((kit): Observation => {
      const entries = open.flatMap((one) => (one.kit === kit ? [one.entry] : []));
      const isSaid = index.kit.get(kit)?.remote?.mustWrite === false;
      return {
        about: [kit],
        ...(isSaid ? {} : { level: 'advice' }),
        says: `${unitName(index, kit)} is in reach of ${waysInWords(index, entries)} and writes to what it is joined to; ${isSaid ? 'nobody needs that' : 'nobody has said who needs that'}.`,
        cure: 'Set it to listen only and enter that; where somebody does need it to write, enter that it must.',
      };
    });
  },
};
