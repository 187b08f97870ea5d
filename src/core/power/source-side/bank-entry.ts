import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Bank } from '../../boat/supply.ts';
import type { BankEntry } from '../../panels-shape.ts';
import { banksUp } from './banks-up.ts';
import { type Draws, drawEntry } from './draw.ts';
import { faultBanks, mainEntry, neededBehind } from './main-entry.ts';

/** The panels and converters that hang on a bank, near or far. */
const servedBy = (index: BoatIndex, bank: Bank): string[] =>
  [...index.boat.supply.panels, ...index.boat.supply.dcdc]
    .filter(({ id }) => banksUp(index, id).banks.includes(bank))
    .map(({ id }) => id)
    .sort(byCodeUnit);

const chargersOf = (index: BoatIndex, bank: Bank): BankEntry['chargers'] =>
  (index.boat.supply.chargers ?? [])
    .filter(({ charges }) => charges.includes(bank.id))
    .map(({ id, kind, ratedA }) => ({ charger: id, kind, ...(ratedA === undefined ? {} : { ratedA }) }));

/** Cautions that stand where work at a bank is told of. */
const cautionsFor = (bank: Bank, chargers: BankEntry['chargers']): string[] => [
  'battery-short',
  ...(bank.chemistry === 'lifepo4' ? ['lithium'] : []),
  ...(chargers.some(({ kind }) => kind === 'mains') ? ['ac'] : []),
  'stray',
];

/** Everything the plan tells of one bank. */
export const bankEntry = (index: BoatIndex, draws: Draws, bank: Bank): BankEntry => {
  const { banks, crankingA } = faultBanks(index, bank);
  const chargers = chargersOf(index, bank);
  return {
    bank: bank.id,
    nominalV: bank.nominalV,
    capacityAh: bank.capacityAh,
    cranks: bank.for !== 'house',
    ...(crankingA === undefined ? {} : { crankingA }),
    with: banks
      .map(({ id }) => id)
      .filter((id) => id !== bank.id)
      .sort(byCodeUnit),
    ...(bank.shortCircuitA === undefined ? {} : { shortCircuitA: bank.shortCircuitA }),
    main: mainEntry({
      main: bank.main,
      ratingA: bank.main?.ratingA,
      needed: neededBehind(index, bank, 'main'),
    }),
    ...(bank.isolator === undefined ? {} : { isolator: bank.isolator }),
    ...(bank.partedBy === undefined ? {} : { partedBy: bank.partedBy }),
    chargers,
    serves: servedBy(index, bank),
    cautions: cautionsFor(bank, chargers),
    ...drawEntry(draws.source(bank.id)),
  };
};
