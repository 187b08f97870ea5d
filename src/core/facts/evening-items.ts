import type { SourceKey } from './sources.ts';

/** What is looked to at the end of every day of the work, before anybody leaves her. */
export const eveningItems = {
  source: 'practice-job-steps',
  says: {
    'pump-lifted': 'Float of the bilge pump lifted by hand, and the pump seen to run',
    'ends-insulated': 'Every loose end insulated; nothing left bare that a switch could make live',
    'off-on-panel': 'What is off, and why, written on the panel',
  },
} as const satisfies { readonly source: SourceKey; readonly says: Readonly<Record<string, string>> };
