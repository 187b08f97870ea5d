import type { Figure } from './figure.ts';

/** What it is worth to have a reading where it is needed, when joins are chosen by their price. */
export const needWorth = {
  must: { value: 1_000_000_000, unit: 'hundredths of the currency', source: 'choice-need-worth' },
  nice: { value: 10_000, unit: 'hundredths of the currency', source: 'choice-need-worth' },
} as const satisfies Record<string, Figure>;
