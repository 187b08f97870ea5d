import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Bank } from '../../boat/supply.ts';
import { crankingShare } from '../../facts/supply-figures.ts';
import type { LoadEntry } from '../../power-shape.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

/** Whether the starter pulls a bank down: it turns it, or nothing parts it from the one that does. */
const isPulledDown = ({ boat }: BoatIndex, bank: Bank): boolean =>
  bank.for !== 'house' ||
  boat.supply.banks.some(
    (other) => other.for === 'start' && other.partedBy === 'nothing' && other.nominalV === bank.nominalV,
  );

const needier = (one: LoadEntry, other: LoadEntry): number => other.minV - one.minV;

/** While the starter turns, units that need more than is left start anew, just when they are wanted. */
export const rebootsWhileCranking: Rule = {
  id: 'supply/reboots-while-cranking',
  level: 'doubt',
  title: 'Units start anew while the starter turns.',
  sources: ['practice-load-test'],
  check: ({ index, plan }) =>
    index.boat.supply.banks
      .filter((bank) => isPulledDown(index, bank))
      .flatMap((bank) => {
        const leftV = bank.nominalV * crankingShare.value;
        const down = plan.loads.filter(({ from, minV }) => from === bank.id && minV > leftV).sort(needier);
        const [neediest] = down;
        if (neediest === undefined) return [];
        const units = [...new Set(down.map(({ port }) => unitOf(port)))];
        return [
          {
            about: [bank.id, ...aFew(units)],
            says: `While the starter turns, the bank ${bank.id} may fall to ${leftV.toFixed(1)} V; ${someNames(units.map((id) => fedName(index, id)))} ${units.length === 1 ? 'needs' : 'need'} more and ${units.length === 1 ? 'starts' : 'start'} anew, just when you leave the berth.`,
            measured: { value: neediest.minV, unit: 'V' },
            limit: { value: leftV, unit: 'V', source: sourceWords(crankingShare.source) },
            cure: 'Feed them from a bank that does not start the engine, or through a converter that holds its volts meanwhile.',
          },
        ];
      }),
};
