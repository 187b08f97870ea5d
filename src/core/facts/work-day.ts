import type { Figure } from './figure.ts';

/** A day of work, where nobody said otherwise. */
export const workDay = {
  hours: { value: 6, unit: 'h', source: 'choice-work-day' },
  /** hour of the clock at which it begins */
  from: { value: 9, unit: 'h', source: 'choice-work-day' },
  /** hours of the clock between which there is light outside */
  lightFrom: { value: 8, unit: 'h', source: 'choice-work-light' },
  lightTo: { value: 18, unit: 'h', source: 'choice-work-light' },
  /** days ashore or with the mast down beyond those the work takes, where nobody entered any */
  spare: { value: 1, unit: 'days', source: 'choice-work-windows' },
} as const satisfies Record<string, Figure>;
