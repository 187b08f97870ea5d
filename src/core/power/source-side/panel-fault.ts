import { panelsUp } from '../../backbone/panels-up.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Panel } from '../../boat/supply.ts';
import { faultCurrentA } from './fault-current.ts';
import { leastFeederOhm } from './feeder-entry.ts';
import { faultBanks } from './main-entry.ts';

/**
 * Current of a dead short at the bars of a panel, A, with every feeder on the way at its shortest; absent behind a converter,
 * which limits itself, and behind a bank whose own short-circuit current nobody has said.
 */
export const panelFaultA = (index: BoatIndex, panel: Panel): number | undefined => {
  const { panels, source } = panelsUp(index, panel);
  const bank = index.banks.get(source);
  if (bank === undefined) return undefined;
  const { shortCircuitA } = faultBanks(index, bank);
  if (shortCircuitA === undefined) return undefined;
  const loopOhm = panels.reduce((sum, next) => sum + leastFeederOhm(next), 0);
  const tapped = panels.find(({ tapV }) => tapV !== undefined)?.tapV;
  return faultCurrentA({ nominalV: tapped ?? bank.nominalV, atSourceA: shortCircuitA, loopOhm });
};
