import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A second wheel in the cockpit, with only the key of a pilot head beside it. */
export const steeringNoWayToLetGo: Fault = {
  rule: 'steering/no-way-to-let-go',
  about: ['cockpit'],
  plant: (boat) => {
    const manned = withPilot(boat, { name: 'manned' });
    return {
      ...manned,
      steering: [...(manned.steering ?? []), { place: 'cockpit', by: 'wheel', letsGo: [{ how: 'pilot-head' }] }],
    };
  },
};
