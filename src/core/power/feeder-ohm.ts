import { panelNominalV } from '../backbone/panel-volts.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Panel } from '../boat/supply.ts';
import { supplyDefaults } from '../facts/defaults.ts';
import { copperOhmPerM } from '../network/copper-ohm.ts';

/**
 * Loop resistance of a panel's feeder, ohm: R = 2 L rho / A at its longest. Where length or size is unknown, that which
 * loses 3 % of the supply at what the panel's main lets through, or at `elseA` where that is unknown too.
 */
export const feederOhm = (index: BoatIndex, panel: Panel, elseA: number): number => {
  const { feeder, mainA = elseA } = panel;
  if (feeder?.areaMm2 !== undefined) {
    return 2 * copperOhmPerM({ areaMm2: feeder.areaMm2 }) * (lengthMm(feeder.length).longestMm / 1000);
  }
  const lostV = (panelNominalV(index, panel) * supplyDefaults.feederDropPct.value) / 100;
  return mainA > 0 ? lostV / mainA : 0;
};
