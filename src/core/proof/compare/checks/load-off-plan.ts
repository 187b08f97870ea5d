import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { figure } from '../say.ts';

/** Exact frame bits over worst-case bits; the planned average is the planned worst case by it. */
const shipsOf = (averagePct: number, worstPct: number, shipsPct: number): number =>
  worstPct === 0 ? 0 : (shipsPct * averagePct) / worstPct;

/** A bus that is much emptier or fuller than planned. Other ships are planned as in a full harbour, and need not be there. */
export const loadOffPlan: Check = {
  id: 'load-off-plan',
  title: 'The bus is emptier or fuller than planned.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, buses }) =>
    buses.flatMap(({ id, wire }) => {
      const traffic = planned.plan.traffic.buses.find(({ bus }) => bus === id);
      const { load, time } = wire;
      if (load === undefined || traffic === undefined || traffic.averagePct === 0) return [];
      if ((time?.durationS ?? 0) < proofLimits.loadAfter.value) return [];
      const ships = shipsOf(traffic.averagePct, traffic.worstPct, traffic.shipsPct);
      const leastPct = (traffic.averagePct - ships) * proofLimits.loadLeast.value;
      const mostPct = traffic.averagePct * proofLimits.loadMost.value;
      if (load.exactPct >= leastPct && load.exactPct <= mostPct) return [];
      const isFuller = load.exactPct > mostPct;
      return [
        {
          about: [id],
          says: `The bus carried ${figure(load.exactPct)} % of what it can; planned is ${figure(traffic.averagePct)} %, and ${figure(leastPct)} to ${figure(mostPct)} % would pass.`,
          cure: isFuller
            ? 'Look for senders that are not planned and messages that come too often, in this report; a gateway that repeats everything shows as an echo.'
            : 'See which units and messages are missing, in this report.',
        },
      ];
    }),
};
