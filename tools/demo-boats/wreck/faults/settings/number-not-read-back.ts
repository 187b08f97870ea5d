import type { Fault } from '../../fault.ts';
import { withPapers } from '../../measured-parts.ts';

/** The ship's number was typed by one person and read back by none. */
export const settingsNumberNotReadBack: Fault = {
  rule: 'settings/number-not-read-back',
  about: [],
  plant: (boat) =>
    withPapers(boat, ({ number, ...papers }) => {
      if (number === undefined) return papers;
      const { readBackBy: _, ...unread } = number;
      return { ...papers, number: unread };
    }),
};
