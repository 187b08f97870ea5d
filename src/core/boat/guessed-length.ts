import { waySlack } from '../facts/way-slack.ts';
import type { Measure } from './measure.ts';
import { type Spot, straightLineM } from './straight-line.ts';

/**
 * What a way between two spots is taken to measure while nobody has taped it: the straight line times the usual slack,
 * up to the next centimetre, at least what joins two places at one spot (facts: waySlack).
 *
 * @example guessedLength({ xM: 0, yM: 0, zM: 0 }, { xM: 3, yM: 4, zM: 0 }) // { valueM: 6.5, how: 'guessed' }
 */
export const guessedLength = (one: Spot, other: Spot): Measure => {
  const lengthM = Math.max(waySlack.least.value, straightLineM(one, other) * waySlack.timesStraight.value);
  // a trap: 6.5 m must not become 6.51 m because a decimal is not exact in binary
  return { valueM: Math.ceil(lengthM * 100 - 1e-6) / 100, how: 'guessed' };
};
