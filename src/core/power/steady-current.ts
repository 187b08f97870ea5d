import { lowestSupply } from '../facts/fuses.ts';

/** The volts a boat of a nominal voltage is fed with at the lowest: 10 V on 12 V, and in that proportion. */
export const lowestSupplyV = (nominalV: number): number =>
  nominalV === 24 ? lowestSupply['24'].value : (nominalV * lowestSupply['12'].value) / 12;

/** Steady current of a load of so many watts at the lowest volts it is fed with, A: a unit that holds its power draws most then. */
export const steadyCurrentA = ({ powerW, lowestV }: { readonly powerW: number; readonly lowestV: number }): number =>
  powerW / lowestV;
