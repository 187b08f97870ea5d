import type { Figure } from './figure.ts';

/** How cables are led and held in a mast. */
export const mastWork = {
  /** the most between two holds */
  holdEvery: { value: 2, unit: 'm', source: 'practice-mast' },
  /** so that they do not slap */
  tieEvery: { value: 1, unit: 'm', source: 'practice-mast' },
  /** on each side of the joints at the foot */
  breakSlack: { value: 0.5, unit: 'm', source: 'practice-mast' },
  /** weight of a cable by the area of its outside, where no data sheet says more */
  gramsPerMetreAndMm2: { value: 2, unit: 'g/m for each mm²', source: 'memory-cable-weight' },
} as const satisfies Record<string, Figure>;

/** Exposures in which no two cables are joined. */
export const jointsKeptFrom = { source: 'practice-dry-joints', exposures: ['bilge', 'weather'] } as const;

/** Weights of cables by the metre, g. */
export const cableGramsPerM = {
  source: 'memory-cable-weight',
  'rg-58': 37,
  'rg-8x': 50,
  'rg-213': 155,
  'low-loss 10 mm': 100,
  'bus drop': 50,
  'radar pair': 150,
} as const;
