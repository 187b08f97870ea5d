import { cableGrades } from '../facts/cable-grades.ts';
import type { Figure } from '../facts/figure.ts';

/** The figures a conductor of one grade can have, and the one taken where the owner gives none; all in ohm/m. */
export interface OhmRange {
  readonly name: string;
  readonly usual: Figure;
  readonly least: Figure;
  readonly most: Figure;
}

/**
 * The range that an owner's resistance is outside of, by the name of the limit it is set under; absent where it is in
 * range, or the limit is none of a cable's resistance.
 *
 * @example slippedOhm({ limitId: 'nmea2000-ohm-light', ohmPerM: 0.0057 }) // { least: 0.045 …, most: 0.075 … }
 */
export const slippedOhm = ({ limitId, ohmPerM }: { limitId: string; ohmPerM: number }): OhmRange | undefined => {
  const found = Object.entries(cableGrades).find(([id]) => limitId === `nmea2000-ohm-${id}`);
  if (found === undefined) return undefined;
  const { name, powerOhmPerM, powerOhmLeastPerM, powerOhmMostPerM } = found[1];
  if (ohmPerM >= powerOhmLeastPerM.value && ohmPerM <= powerOhmMostPerM.value) return undefined;
  return { name, usual: powerOhmPerM, least: powerOhmLeastPerM, most: powerOhmMostPerM };
};
