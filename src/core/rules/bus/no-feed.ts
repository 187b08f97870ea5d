import type { Rule } from '../rule.ts';
import { busName } from '../rule-words.ts';

/** A bus that no circuit feeds is planned as if the nearest panel fed it; somebody must decide. */
export const noFeed: Rule = {
  id: 'bus/no-feed',
  level: 'doubt',
  title: 'No circuit feeds a bus.',
  sources: ['practice-bus-feed'],
  check: ({ index, plan }) => {
    const fed = new Set(index.boat.supply.panels.flatMap((panel) => panel.circuits).flatMap(({ feeds }) => feeds));
    const joined = new Set(plan.joins.flatMap((join) => (join.bus === undefined ? [] : [join.bus])));
    const hasPanel = index.boat.supply.panels.length > 0;
    return index.boat.buses
      .filter((bus) => joined.has(bus.id) && !fed.has(bus.id))
      .map((bus) => ({
        about: [bus.id],
        says: `No circuit feeds ${busName(index, bus.id)}. ${hasPanel ? 'It is planned as if a circuit of the nearest panel did.' : 'No panel is entered that could, so nothing is known of its volts.'}`,
        cure: 'Enter the circuit that feeds it: a breaker of its own on the house bank.',
      }));
  },
};
