import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A computer that keeps the clutch engaged when its bus is gone. */
export const steeringClutchStaysEngaged: Fault = {
  rule: 'steering/clutch-stays-engaged',
  about: ['firm-drive.motor', 'firm-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'firm', output: { whenBusIsLost: 'holds' } }),
};
