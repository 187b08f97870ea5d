import { panelsUp } from '../backbone/panels-up.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { Bank } from '../boat/supply.ts';
import type { Circuits } from '../power/circuits-by-target.ts';

/** The bank something hangs on in the end, and what the bank gives for each watt that arrives. */
export interface FedBank {
  readonly bank: Bank;
  readonly wattsPerWatt: number;
}

/** The bank behind a bank or converter; a converter takes from its own feed what it gives, divided by its efficiency. */
export const fedBank = (index: BoatIndex, circuits: Circuits, from: string | undefined): FedBank | undefined => {
  const seen = new Set<string>();
  let source = from;
  let wattsPerWatt = 1;
  while (source !== undefined && !seen.has(source)) {
    seen.add(source);
    const bank = index.banks.get(source);
    if (bank !== undefined) return { bank, wattsPerWatt };
    const id = source;
    const converter = index.boat.supply.dcdc.find((entry) => entry.id === id);
    const panel = index.panels.get(circuits.get(id)?.panel ?? '');
    if (converter === undefined || panel === undefined) return undefined;
    wattsPerWatt /= converter.efficiencyPct / 100;
    source = panelsUp(index, panel).source;
  }
  return undefined;
};
