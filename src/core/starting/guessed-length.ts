import type { Place, Way } from '../boat/boat-schema.ts';
import type { Measure } from '../boat/measure.ts';
import { guessedWay } from '../facts/hull-measures.ts';

export const centimetres = (metres: number): number => Math.round(metres * 100) / 100;

/** Metres of the straight line between two places. */
export const apartM = (one: Place, other: Place): number =>
  Math.sqrt((one.xM - other.xM) ** 2 + (one.yM - other.yM) ** 2 + (one.zM - other.zM) ** 2);

/**
 * A length nobody has taped: the straight line times what such ways usually go round, up to the next 5 cm. It is no shorter
 * than the straight line, and may be 30 % longer, by 0.3 m at least. Source: practice-guessed-ways (common practice).
 *
 * @example guessedLength(2, 'open') // { valueM: 2.6, how: 'guessed', lessM: 0.6, moreM: 0.78 }
 */
export const guessedLength = (straightM: number, kind: Way['kind']): Measure => {
  const { throughBoat, upMast, morePct, moreAtLeastM } = guessedWay;
  const { times } = kind === 'mast' ? upMast : throughBoat;
  // up, so that a line cut to the shortest length is never below the straight one
  const leastM = Math.ceil(straightM * 100 - 1e-9) / 100;
  const valueM = Math.max(0.1, leastM, Math.ceil(straightM * times * 20 - 1e-9) / 20);
  return {
    valueM: centimetres(valueM),
    how: 'guessed',
    lessM: centimetres(valueM - leastM),
    moreM: centimetres(Math.max((valueM * morePct) / 100, moreAtLeastM)),
  };
};
