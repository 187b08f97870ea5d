import type { Figure } from './figure.ts';

/** Least bend radius of a cable, as a multiple of its outside diameter; the larger of this and `leastRadius` counts. */
export const bendFactors = {
  bus: { value: 8, unit: 'x outside diameter', source: 'aipu-bend' },
  power: { value: 6, unit: 'x outside diameter', source: 'memory-bend' },
  coax: { value: 10, unit: 'x outside diameter, bent again and again', source: 'memory-bend' },
  'coax-once': { value: 5, unit: 'x outside diameter, bent once', source: 'memory-bend' },
  ethernet: { value: 4, unit: 'x outside diameter, unscreened', source: 'memory-bend' },
  'ethernet-screened': { value: 8, unit: 'x outside diameter', source: 'memory-bend' },
} as const satisfies Record<string, Figure>;

/** Radius that several handbooks ask of any data or power cable. */
export const leastBend = { value: 100, unit: 'mm', source: 'practice-bend' } as const satisfies Figure;
