import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** An old sensor that gives a frequency on a computer that hears a potentiometer. */
export const steeringRudderSensorNotHeard: Fault = {
  rule: 'steering/rudder-sensor-not-heard',
  about: ['unheard-drive.motor', 'unheard-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'unheard', rudder: 'frequency' }),
};
