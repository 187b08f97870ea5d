import type { ReadingId } from './reading-ids.ts';

/** One way to work a reading out: what has to arrive at the unit that does it, and the reference it then has. */
export interface Recipe {
  readonly from: readonly ReadingId[];
  readonly reference?: 'water' | 'ground';
}

/**
 * Readings that no sensor measures, each with the ways to work it out, the best first. A unit whose sheet says that it
 * gives one of them gives it only while the ingredients of a recipe reach it. Source: practice-derived-readings.
 */
export const derivedReadings: ReadonlyMap<ReadingId, readonly Recipe[]> = new Map<ReadingId, readonly Recipe[]>([
  [
    'wind-true',
    [
      { from: ['wind-apparent', 'speed-water'], reference: 'water' },
      { from: ['wind-apparent', 'course-speed-ground'], reference: 'ground' },
    ],
  ],
  ['set-drift', [{ from: ['heading', 'speed-water', 'course-speed-ground'] }]],
]);
