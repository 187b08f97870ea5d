import type { Fault } from '../../fault.ts';
import { withPapers } from '../../measured-parts.ts';

/** A number of a private registrar, and she calls at foreign ports. */
export const settingsNumberNotAbroad: Fault = {
  rule: 'settings/number-not-abroad',
  about: [],
  plant: (boat) =>
    withPapers(boat, ({ number, ...papers }) => ({
      ...papers,
      goesAbroad: true,
      ...(number === undefined ? {} : { number: { ...number, from: 'private-registrar' } }),
    })),
};
