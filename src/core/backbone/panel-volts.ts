import type { BoatIndex } from '../boat/boat-index.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Panel } from '../boat/supply.ts';
import { supplyDefaults } from '../facts/defaults.ts';
import { copperOhmPerM } from '../network/copper-ohm.ts';
import { panelsUp } from './panels-up.ts';

/**
 * Volts at a panel with the bank at its lowest, in whole millivolts rounded down: V = V_source - sum of the feeders' drops.
 * Each feeder carries its panel's main current: dV = 2 rho L I / A, with rho / A from copperOhmPerM, L the
 * longest length in m, I the main fuse in A, A in mm². A feeder of which one of the three is unknown loses 3 % of the source.
 */
export const panelMv = (index: BoatIndex, panel: Panel): number => {
  const { panels, source } = panelsUp(index, panel);
  const sourceV = lowestSourceV(index, source);
  const atPanelV = panels.reduce((volts, next) => volts - feederDropV(next, sourceV), sourceV);
  return Math.max(0, Math.floor(atPanelV * 1000 + 1e-6));
};

/** Nominal volts of what a panel hangs on. */
export const panelNominalV = (index: BoatIndex, panel: Panel): number => {
  const { source } = panelsUp(index, panel);
  const converter = index.boat.supply.dcdc.find((entry) => entry.id === source);
  return index.banks.get(source)?.nominalV ?? converter?.outV ?? supplyDefaults.nominalV.value;
};

/** Volts of a bank at its lowest, or of a converter. */
export const lowestSourceV = (index: BoatIndex, source: string): number => {
  const bank = index.banks.get(source);
  if (bank !== undefined) return bank.lowestV ?? bank.nominalV * supplyDefaults.lowestShare.value;
  const converter = index.boat.supply.dcdc.find((entry) => entry.id === source);
  return converter?.outV ?? supplyDefaults.nominalV.value * supplyDefaults.lowestShare.value;
};

const feederDropV = (panel: Panel, sourceV: number): number => {
  const areaMm2 = panel.feeder?.areaMm2;
  if (panel.feeder === undefined || areaMm2 === undefined || panel.mainA === undefined) {
    return (sourceV * supplyDefaults.feederDropPct.value) / 100;
  }
  const lengthM = lengthMm(panel.feeder.length).longestMm / 1000;
  return 2 * copperOhmPerM({ areaMm2 }) * lengthM * panel.mainA;
};
