import { antennaLimits } from '../facts/antenna-limits.ts';
import { busLimits } from '../facts/bus-limits.ts';
import { compassOwnLimits } from '../facts/compass-figures.ts';
import { fittingLimits } from '../facts/fitting-limits.ts';
import { lineLimits } from '../facts/line-limits.ts';
import { powerLimits } from '../facts/power-limits.ts';
import { sensorOwnLimits } from '../facts/sensor-figures.ts';
import { sources } from '../facts/sources.ts';
import { steeringLimits } from '../facts/steering-figures.ts';
import { trafficLimits } from '../facts/traffic-limits.ts';
import type { Boat } from './boat-schema.ts';

const limits = {
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
type LimitId = keyof typeof limits;

/** Whether a name is that of a limit known here. */
export const isLimitId = (id: string): id is LimitId => Object.hasOwn(limits, id);

/** A limit as it holds on one boat; `source` is in words, ready to print. */
export interface LimitOnBoat {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/**
 * The limit that holds on this boat: the owner's own figure where `limits` in the file has one, else the one in facts.
 *
 * @example limitOf(boat, 'nmea2000-one-drop') // { value: 6, unit: 'm', source: 'published: …' }
 */
export const limitOf = (boat: Pick<Boat, 'limits'>, limitId: LimitId): LimitOnBoat => {
  const { value, unit, source } = limits[limitId];
  const own = boat.limits !== undefined && Object.hasOwn(boat.limits, limitId) ? boat.limits[limitId] : undefined;
  if (own !== undefined) return { value: own.value, unit, source: `set by the owner: ${own.reason}` };
  return { value, unit, source: `${sources[source].standing}: ${sources[source].text}` };
};
