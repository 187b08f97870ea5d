import { nauticalMileM } from '../../units/sea-units.ts';

/**
 * How far off a line a boat comes out that steers by a heading with an error: d = 1852 r tan(e), metres, r in nautical miles.
 *
 * @example offTheLineM({ errorDeg: 3, rangeNm: 1 }) // 97
 */
export const offTheLineM = ({ errorDeg, rangeNm }: { readonly errorDeg: number; readonly rangeNm: number }): number =>
  nauticalMileM * rangeNm * Math.tan((errorDeg * Math.PI) / 180);
