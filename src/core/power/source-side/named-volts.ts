import { namedVoltages } from '../../facts/supply-figures.ts';

/**
 * The name of a voltage: 13.8 V of a converter and 12.6 V of a bank are both 12 V. The largest of the names it is not below,
 * with a slack for a system that stands a little under its name; a voltage below all of them is its own name.
 *
 * @example namedV(13.8) // 12
 */
export const namedV = (volts: number): number =>
  namedVoltages.valuesV.findLast((named) => volts >= named * namedVoltages.fromShare) ?? volts;
