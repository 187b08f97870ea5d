import { compassSafeDistances } from '../facts/compass-figures.ts';
import { steeringFromStandard } from './standard-from-steering.ts';

/**
 * Distance from a steering compass usual for a kind of unit, until its plate is read, m: what is printed for steering
 * compasses, else what follows from that for standard ones, else the far end of what habit says. Undefined where nothing is
 * known of the kind.
 *
 * @example standInDistanceM('loudspeaker') // 2
 */
export const standInDistanceM = (kind: string): number | undefined => {
  const row = compassSafeDistances.find(({ kinds }) => kinds?.includes(kind));
  if (row === undefined) return undefined;
  if (row.steeringM !== undefined) return row.steeringM;
  return row.standardM === undefined ? row.rangeM?.[1] : steeringFromStandard(row.standardM);
};
