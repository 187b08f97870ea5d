import type { Fault } from '../../fault.ts';
import { withAis, withPapers } from '../../measured-parts.ts';

/** Under the US flag an AIS class B comes, and the owner means to set it up. */
export const settingsClassBByOwner: Fault = {
  rule: 'settings/class-b-by-owner',
  about: ['ais-owner'],
  plant: (boat) =>
    withPapers(withAis(boat, 'ais-owner', 'comes'), (papers) => ({ ...papers, flag: 'US', workBy: 'owner' })),
};
