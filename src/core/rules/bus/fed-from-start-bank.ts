import { panelsUp } from '../../backbone/panels-up.ts';
import type { Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** When the starter turns, the volts of its bank fall under what the units need, and every screen starts anew. */
export const fedFromStartBank: Rule = {
  id: 'bus/fed-from-start-bank',
  level: 'fault',
  title: 'A bus is fed from the bank that starts the engine.',
  sources: ['practice-bus-feed'],
  check: ({ index }) =>
    index.boat.supply.panels.flatMap((panel) => {
      const bank = index.banks.get(panelsUp(index, panel).source);
      if (bank?.for !== 'start') return [];
      return panel.circuits
        .flatMap((circuit) => circuit.feeds)
        .filter((fed) => index.buses.has(fed))
        .map((bus) => ({
          about: [bus, bank.id],
          says: `${busName(index, bus)} is fed from the bank ${bank.id}, which starts the engine. When the starter turns, every screen on it may start anew.`,
          cure: 'Feed it from a circuit of the house bank.',
        }));
    }),
};
