import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Bank } from '../../boat/supply.ts';

/** What joins a starting bank to the house at times, so that both feed a short. */
const joins: ReadonlySet<Bank['partedBy']> = new Set(['switch', 'relay', 'nothing']);

/**
 * The banks that a bank may stand in parallel with: a switch or relay joins the starting bank to the house banks of the same
 * volts at times, and both feed a short then. A diode, a converter or a gap keeps them apart; where
 * nobody has said, they count apart, and a finding asks.
 */
export const parallelBanks = (index: BoatIndex, bank: Bank): readonly Bank[] =>
  index.boat.supply.banks.filter(
    (other) =>
      other.id !== bank.id &&
      other.nominalV === bank.nominalV &&
      (bank.for === 'start') !== (other.for === 'start') &&
      joins.has((bank.for === 'start' ? bank : other).partedBy),
  );
