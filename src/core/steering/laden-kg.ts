import type { Boat } from '../boat/boat-schema.ts';
import { ladenShare } from '../facts/steering-figures.ts';

/**
 * What a boat weighs with crew, stores and full tanks: as the file says, or 1.2 times what she weighs empty; absent where the
 * file says neither.
 *
 * @example ladenKg({ displacement: { valueKg: 5000, of: 'light' } }) // 6000
 */
export const ladenKg = ({ displacement }: Pick<Boat['hull'], 'displacement'>): number | undefined => {
  if (displacement === undefined) return undefined;
  return displacement.of === 'laden' ? displacement.valueKg : displacement.valueKg * ladenShare.value;
};
