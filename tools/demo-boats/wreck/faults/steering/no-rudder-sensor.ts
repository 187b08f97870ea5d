import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** The rudder sensor was left out. */
export const steeringNoRudderSensor: Fault = {
  rule: 'steering/no-rudder-sensor',
  about: ['blind-drive.motor', 'blind-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'blind', rudder: 'none' }),
};
