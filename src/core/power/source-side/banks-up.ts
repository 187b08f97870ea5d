import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Bank, Dcdc, Panel } from '../../boat/supply.ts';

/** Everything that a panel or converter hangs on, near or far: through the panels above it and the converters between. */
export interface Above {
  readonly panels: readonly Panel[];
  readonly converters: readonly Dcdc[];
  readonly banks: readonly Bank[];
}

/** The panels with a circuit that feeds a converter. */
export const panelsFeeding = (index: BoatIndex, fed: string): readonly Panel[] =>
  [...index.panels.values()].filter(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(fed)));

/** What a panel or converter hangs on in the end. A ring has what hangs in it and no bank; it never runs for ever. */
export const banksUp = (index: BoatIndex, start: string): Above => {
  const seen = new Set<string>();
  const panels: Panel[] = [];
  const converters: Dcdc[] = [];
  const banks: Bank[] = [];
  const open = [start];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (seen.has(id)) continue;
    seen.add(id);
    const [panel, bank] = [index.panels.get(id), index.banks.get(id)];
    const converter = index.boat.supply.dcdc.find((entry) => entry.id === id);
    if (panel !== undefined) open.push(panel.from);
    if (panel !== undefined && id !== start) panels.push(panel);
    if (bank !== undefined) banks.push(bank);
    if (converter !== undefined && id !== start) converters.push(converter);
    if (converter !== undefined) open.push(...panelsFeeding(index, id).map((above) => above.id));
  }
  return { panels, converters, banks };
};
