import { lastPhase } from '../../boat/phase.ts';
import { networksOf } from '../../joins/networks.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** A socket takes one cable; two on paper means a switch with too few sockets. */
export const twoCablesInOneSocket: Rule = {
  id: 'network/two-cables-in-one-socket',
  level: 'fault',
  title: 'Two network cables are to go into one socket.',
  sources: ['practice-ethernet'],
  check: ({ index, plan }) =>
    networksOf(index, lastPhase(index.boat), plan.joins).flatMap(({ links, hubs }) => {
      const cables = new Map<string, string[]>();
      for (const { join, ends } of links) {
        for (const { id } of ends) cables.set(id, [...(cables.get(id) ?? []), join]);
      }
      return [...cables]
        .filter(([, joins]) => joins.length > 1)
        .map(([socket, joins]) => {
          const [kit = ''] = socket.split('.');
          const free = hubs.find((hub) => hub.kit === kit)?.free ?? 0;
          return {
            about: [socket, ...joins],
            says: `${joins.length} cables are to go into socket ${socket.split('.')[1]} of ${unitName(index, socket)}.`,
            cure:
              free > 0
                ? `Use another of its sockets: ${free} ${free === 1 ? 'is' : 'are'} free.`
                : 'Take a switch with more sockets, or put a second one on a socket of the first.',
          };
        });
    }),
};
