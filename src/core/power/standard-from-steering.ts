import { compassLimits } from '../facts/compass-figures.ts';

/** How many times farther from a standard compass than from a steering one: a dipole’s field falls with the cube. */
const ratio = Math.cbrt(compassLimits.steering.value / compassLimits.standard.value);

/**
 * Distance from a standard compass where only that from a steering compass is printed: (18 / 5.4)^(1/3) times as far.
 *
 * @example standardFromSteering(0.5) // 0.747
 */
export const standardFromSteering = (steeringM: number): number => steeringM * ratio;

/** The other way round, where only the distance from a standard compass is printed. */
export const steeringFromStandard = (standardM: number): number => standardM / ratio;
