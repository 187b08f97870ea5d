import type { Figure } from './figure.ts';

/** What is taken where an owner said nothing, and the bounds of what is believed, each a setting or a choice. */
export const settingFigures = {
  'waves-and-squat': { value: 0.3, unit: 'm', source: 'choice-depth-margins' },
  'depth-doubt': { value: 0.5, unit: 'm', source: 'choice-depth-margins' },
  'overhead-margin': { value: 1, unit: 'm', source: 'choice-depth-margins' },
  'draft-share-most': { value: 0.35, unit: 'of the length', source: 'choice-feet-for-metres' },
  'feet-ratio-least': { value: 2.6, unit: 'times', source: 'choice-feet-for-metres' },
  'feet-ratio-most': { value: 4.1, unit: 'times', source: 'choice-feet-for-metres' },
  'curve-headings-least': { value: 8, unit: 'headings', source: 'choice-deviation-curve' },
  'curve-gap-most': { value: 60, unit: '°', source: 'choice-deviation-curve' },
  'length-agrees': { value: 0.06, unit: 'm', source: 'choice-typed-agrees' },
  'factor-agrees': { value: 0.02, unit: 'factor', source: 'choice-typed-agrees' },
  'angle-agrees': { value: 1, unit: '°', source: 'choice-typed-agrees' },
} as const satisfies Record<string, Figure>;
