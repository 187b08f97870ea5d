import { sensorSiting } from '../../facts/sensor-figures.ts';

/**
 * How far a transducer goes ahead of the propeller: a tenth of the waterline.
 *
 * @example leastAheadM(10.4) // 1.04
 */
export const leastAheadM = (waterlineM: number): number => waterlineM * sensorSiting.aheadOfPropeller.value;
