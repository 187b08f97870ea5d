import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A computer whose manual nobody has. */
export const steeringDriveNotKnown: Fault = {
  rule: 'steering/drive-not-known',
  about: ['silent-drive.motor', 'silent-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'silent', silent: true }),
};
