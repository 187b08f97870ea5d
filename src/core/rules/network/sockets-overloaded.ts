import type { Rule } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';

/** A switch that feeds more units than it can drops one of them, and seldom the same. */
export const socketsOverloaded: Rule = {
  id: 'network/sockets-overloaded',
  level: 'fault',
  title: 'A switch is to feed more than its sockets may give together.',
  sources: ['ieee-poe'],
  check: ({ index, plan }) =>
    plan.networks.flatMap(({ hubs }) =>
      hubs.flatMap(({ kit, reservedW, budgetW }) => {
        if (reservedW === undefined || budgetW === undefined || reservedW <= budgetW) return [];
        return [
          {
            about: [kit],
            says: `The units on the sockets of ${unitName(index, kit)} reserve ${reservedW} W by their classes; it may give ${budgetW} W.`,
            measured: { value: reservedW, unit: 'W' },
            limit: { value: budgetW, unit: 'W', source: sourceWords('ieee-poe') },
            cure: 'Feed one of them by an injector of its own, or take a switch with a larger supply.',
          },
        ];
      }),
    ),
};
