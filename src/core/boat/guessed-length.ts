import { guessedWay } from '../facts/hull-measures.ts';
import type { Way } from './boat-schema.ts';
import type { Measure } from './measure.ts';

const centimetres = (metres: number): number => Math.round(metres * 100) / 100;

/** Two places at one spot are still joined by a little cable. */
const leastWayM = 0.1;

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
  const valueM = Math.max(leastWayM, leastM, Math.ceil(straightM * times * 20 - 1e-9) / 20);
  return {
    valueM: centimetres(valueM),
    how: 'guessed',
    lessM: centimetres(valueM - leastM),
    moreM: centimetres(Math.max((valueM * morePct) / 100, moreAtLeastM)),
  };
};
