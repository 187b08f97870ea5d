import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { bankWords, mainWords } from '../power/power-words.ts';
import { endWords } from './end-words.ts';
import { loadSumRows } from './load-rows.ts';
import { printAmps, printVolts } from './print-power.ts';

/** One bank or converter as a source: what it is, what guards it and what it gives. */
export interface BankRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly lights: readonly string[];
  /** it cannot carry everything drawing at once */
  readonly isOpen: boolean;
}

const shortWords = ({ shortCircuitA, crankingA }: Plan['banks'][number]): string => {
  if (shortCircuitA !== undefined) return `a short circuit drives ${printAmps(shortCircuitA)} by its maker`;
  return crankingA === undefined
    ? 'nobody has said how much a short circuit drives'
    : `it cranks with ${printAmps(crankingA)}, and drives more into a short circuit`;
};

const sumWords = (index: CardBoat, plan: Plan, id: string): string[] =>
  loadSumRows(index, { loadSums: plan.loadSums.filter(({ from }) => from === id) }).map(
    ({ phase, typical, most }) => `${phase} ${typical} typical, ${most} with everything drawing`,
  );

const lowestWords = (plan: Plan, id: string): { says: string[]; isOpen: boolean } => {
  const supply = plan.supplies.find(({ source }) => source === id);
  if (supply === undefined) return { says: [], isOpen: false };
  return supply.works
    ? { says: [`${printVolts(supply.sourceV)} at its lowest`], isOpen: false }
    : { says: [`at ${printVolts(supply.sourceV)} it cannot carry everything drawing at once`], isOpen: true };
};

/** Every bank and converter that something hangs on, and every bank that stands alone, in the order of the boat file. */
export const bankRows = (index: CardBoat, plan: Plan): BankRow[] => [
  ...index.boat.supply.banks.map((bank) => {
    const entry = plan.banks.find((other) => other.bank === bank.id);
    const { says, isOpen } = lowestWords(plan, bank.id);
    const guards =
      entry === undefined
        ? []
        : [mainWords(entry.main).words, ...(entry.isolator === true ? ['battery switch'] : []), shortWords(entry)];
    return {
      key: bank.id,
      what: endWords(index, bank.id),
      fact: [bankWords(bank), ...says, ...guards, ...sumWords(index, plan, bank.id)].join('; '),
      lights: [bank.id, bank.place],
      isOpen,
    };
  }),
  ...index.boat.supply.dcdc.map(({ id, place, outV, ratedA }) => {
    const { says, isOpen } = lowestWords(plan, id);
    return {
      key: id,
      what: `converter ${id}`,
      fact: [`${outV} V, ${printAmps(ratedA)}`, ...says, ...sumWords(index, plan, id)].join('; '),
      lights: [id, place],
      isOpen,
    };
  }),
];
