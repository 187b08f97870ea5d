import type { Figure } from './figure.ts';

/** What a depth offset and the speed of sound hang on. */
export const depthFigures = {
  /** one step of the offset in PGN 128267 */
  offsetStep: { value: 0.001, unit: 'm', source: 'sensor-manuals-offset' },
  /** two offsets that are no farther apart are one that was entered twice */
  sameOffset: { value: 0.01, unit: 'm', source: 'choice-depth-offset' },
  /** what a sounder is set to from the works */
  soundSpeedSet: { value: 1500, unit: 'm/s', source: 'memory-sound-speed' },
  /** fresh water of 15 °C */
  soundSpeedFresh: { value: 1466, unit: 'm/s', source: 'memory-sound-speed' },
} as const satisfies Record<string, Figure>;
