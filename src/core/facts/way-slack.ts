import type { Figure } from './figure.ts';

/** How much longer than the straight line between its places a way counts while nobody has measured it. */
export const waySlack = {
  timesStraight: { value: 1.3, unit: 'times the straight line', source: 'practice-way-slack' },
  /** places at one spot are still joined by a little cable */
  least: { value: 0.1, unit: 'm', source: 'practice-way-slack' },
} as const satisfies Record<string, Figure>;
