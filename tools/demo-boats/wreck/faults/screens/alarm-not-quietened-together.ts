import type { Fault } from '../../fault.ts';
import { withScreens } from '../../screen-units.ts';

/** Two alarm panels in the forward cabin that know nothing of each other. */
export const screensAlarmNotQuietenedTogether: Fault = {
  rule: 'screens/alarm-not-quietened-together',
  about: ['loud-gas', 'loud-smoke'],
  plant: (boat) =>
    withScreens(boat, 'fore-cabin', {
      'loud-gas': { name: 'Panel of the gas alarm', lighting: { dims: 'with-group', quietens: false } },
      'loud-smoke': { name: 'Panel of the smoke alarm', lighting: { dims: 'with-group', quietens: false } },
    }),
};
