import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A drive for boats of 3 tonnes on one of nearly five. */
export const steeringDriveTooSmall: Fault = {
  rule: 'steering/drive-too-small',
  about: ['weak-drive.motor', 'weak-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'weak', drive: { boatKg: 3000 } }),
};
