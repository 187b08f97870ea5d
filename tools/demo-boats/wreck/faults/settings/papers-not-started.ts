import type { Fault } from '../../fault.ts';
import { withAis, withPapers } from '../../measured-parts.ts';

/** An AIS comes, and nobody has asked for its licence. */
export const settingsPapersNotStarted: Fault = {
  rule: 'settings/papers-not-started',
  about: ['ais-new'],
  plant: (boat) =>
    withPapers(withAis(boat, 'ais-new', 'comes'), ({ paperwork = [], ...papers }) => ({
      ...papers,
      paperwork: paperwork.filter(({ paper }) => paper !== 'ship-radio-licence'),
    })),
};
