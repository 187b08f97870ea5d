import { antennaLimits } from '../facts/antenna-limits.ts';
import { busLimits } from '../facts/bus-limits.ts';
import { compassOwnLimits } from '../facts/compass-figures.ts';
import { fittingLimits } from '../facts/fitting-limits.ts';
import { lineLimits } from '../facts/line-limits.ts';
import { powerLimits } from '../facts/power-limits.ts';
import { sensorOwnLimits } from '../facts/sensor-figures.ts';
import { steeringLimits } from '../facts/steering-figures.ts';
import { trafficLimits } from '../facts/traffic-limits.ts';
import type { Boat } from './boat-schema.ts';
import { limitIn } from './limit-in.ts';

/** Every limit by its name, with its source as a key of the ledger. */
export const limits = {
  ...antennaLimits,
  ...compassOwnLimits,
  ...sensorOwnLimits,
  ...busLimits,
  ...fittingLimits,
  ...trafficLimits,
  ...lineLimits,
  ...powerLimits,
  ...steeringLimits,
};
export type LimitId = keyof typeof limits;

/**
 * The figure of a limit that holds on this boat, in the unit of the limit: the owner's own where the file has one, else the
 * one in facts. Who prints it asks `limitOf`, which knows the words of its source.
 *
 * @example limitValue(boat, 'nmea2000-one-drop') // 6
 */
export const limitValue = (boat: Pick<Boat, 'limits'>, limitId: LimitId): number => limitIn(limits, boat, limitId);
