import { proofLimits } from '../../facts/proof-limits.ts';
import type { ValuePair } from './value-book.ts';

/** Whether two headings lie apart by just the variation, all the time, where that is large enough to be told from an error. */
export const isMarkedWrongly = <Source>({ a, differences, variations }: ValuePair<Source>): boolean => {
  const apart = differences.median();
  const variation = variations.median();
  if (a.kind !== 'heading' || apart === undefined || variation === undefined) return false;
  const { comparisons, variationTold, variationMet } = proofLimits;
  return (
    differences.count() >= comparisons.value &&
    Math.abs(variation) >= variationTold.value &&
    Math.abs(Math.abs(apart) - Math.abs(variation)) <= variationMet.value &&
    differences.spread() <= 2 * variationMet.value
  );
};
