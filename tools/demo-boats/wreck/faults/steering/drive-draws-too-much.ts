import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A pump that peaks at 34 A on an output of 20 A. */
export const steeringDriveDrawsTooMuch: Fault = {
  rule: 'steering/drive-draws-too-much',
  about: ['thirsty-drive.motor', 'thirsty-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'thirsty', drive: { peakA: 34 }, output: { runA: 12, peakA: 20 } }),
};
