import type { ReadingId } from './reading-ids.ts';

/** Readings that exist several times aboard and are told apart by their number alone. */
export const numberedReadings: ReadonlySet<ReadingId> = new Set([
  'engine',
  'transmission',
  'fuel-level',
  'water-level',
  'battery',
  'charging',
  'ac-power',
]);
