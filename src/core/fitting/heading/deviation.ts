import { fittingLimits } from '../../facts/fitting-limits.ts';

/** A deviation as it is written on a card. */
export interface NamedDeviation {
  /** east positive, over -180 up to 180 */
  readonly deviationDeg: number;
  /** absent where there is none */
  readonly name?: 'E' | 'W';
}

/**
 * Deviation is the magnetic heading less what the compass shows, the short way round the card: east where it is positive.
 *
 * @example deviationOf({ magneticDeg: 2, compassDeg: 358 }) // { deviationDeg: 4, name: 'E' }
 */
export const deviationOf = ({
  magneticDeg,
  compassDeg,
}: {
  readonly magneticDeg: number;
  readonly compassDeg: number;
}): NamedDeviation => {
  const turn = (((magneticDeg - compassDeg) % 360) + 360) % 360;
  const deviationDeg = turn > 180 ? turn - 360 : turn;
  return { deviationDeg, ...(deviationDeg === 0 ? {} : { name: deviationDeg > 0 ? ('E' as const) : ('W' as const) }) };
};

/**
 * What to do about the largest deviation of a card: leave it alone under 3°, note it on the card up to 5°, adjust above.
 *
 * @example cardVerdict(4) // 'note'
 */
export const cardVerdict = (largestDeg: number): 'ignore' | 'note' | 'adjust' => {
  const deg = Math.abs(largestDeg);
  if (deg < fittingLimits['card-ignore-below'].value) return 'ignore';
  return deg > fittingLimits['card-adjust-above'].value ? 'adjust' : 'note';
};
