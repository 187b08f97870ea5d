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

/** Readings of which a boat has one: two senders give two answers, and each screen shows which it likes. */
export const soleReadings: ReadonlySet<ReadingId> = new Set([
  'position',
  'course-speed-ground',
  'heading',
  'variation',
  'rate-of-turn',
  'depth',
  'speed-water',
  'wind-apparent',
  'wind-true',
  'rudder',
]);
