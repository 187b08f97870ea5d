import { panelNominalV } from '../../backbone/panel-volts.ts';
import { panelsUp } from '../../backbone/panels-up.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Panel } from '../../boat/supply.ts';
import { namedV } from './named-volts.ts';

/** Volts a panel goes by: those of its bank, of a tap of it, or the name of what its converter gives. */
export const panelV = (index: BoatIndex, panel: Panel): number => {
  const volts = tapOf(index, panel) ?? panelNominalV(index, panel);
  return index.banks.has(panelsUp(index, panel).source) ? volts : namedV(volts);
};

/** The tap between the batteries of a bank that a panel hangs on, itself or by a panel above it. */
const tapOf = (index: BoatIndex, panel: Panel): number | undefined => {
  const seen = new Set<string>();
  for (let next: Panel | undefined = panel; next !== undefined && !seen.has(next.id); ) {
    if (next.tapV !== undefined) return next.tapV;
    seen.add(next.id);
    next = index.panels.get(next.from);
  }
  return undefined;
};
