import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A reversing pump on outputs made for two valves. */
export const steeringOutputOfAnotherKind: Fault = {
  rule: 'steering/output-of-another-kind',
  about: ['valves-drive.motor', 'valves-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'valves', output: { works: ['solenoid-valves'] } }),
};
