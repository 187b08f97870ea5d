import { inchesInFoot, inchM } from './foot.ts';

/**
 * Prints a length for people: metres to the centimetre, or feet and inches to the nearest inch.
 *
 * @example printLength({ valueM: 3.81, as: 'feet' }) // '12 ft 6 in'
 */
export const printLength = ({ valueM, as }: { readonly valueM: number; readonly as: 'metres' | 'feet' }): string => {
  if (as === 'metres') return `${valueM.toFixed(2)} m`;
  const allInches = Math.round(valueM / inchM);
  const feet = Math.floor(allInches / inchesInFoot);
  const inches = allInches % inchesInFoot;
  if (feet === 0) return `${inches} in`;
  return inches === 0 ? `${feet} ft` : `${feet} ft ${inches} in`;
};
