import type { Fault } from '../../fault.ts';
import { steeringClutchNotServed } from './clutch-not-served.ts';
import { steeringClutchStaysEngaged } from './clutch-stays-engaged.ts';
import { steeringDriveDrawsTooMuch } from './drive-draws-too-much.ts';
import { steeringDriveNotKnown } from './drive-not-known.ts';
import { steeringDriveTooSmall } from './drive-too-small.ts';
import { steeringLeadsLoseTooMuch } from './leads-lose-too-much.ts';
import { steeringMotorVoltsDiffer } from './motor-volts-differ.ts';
import { steeringNoRudderSensor } from './no-rudder-sensor.ts';
import { steeringNoWayToLetGo } from './no-way-to-let-go.ts';
import { steeringOutputOfAnotherKind } from './output-of-another-kind.ts';
import { steeringRudderSensorNotHeard } from './rudder-sensor-not-heard.ts';

/** The faults of this area, one a rule. */
export const steeringFaults: readonly Fault[] = [
  steeringClutchNotServed,
  steeringClutchStaysEngaged,
  steeringDriveDrawsTooMuch,
  steeringDriveNotKnown,
  steeringDriveTooSmall,
  steeringLeadsLoseTooMuch,
  steeringMotorVoltsDiffer,
  steeringNoRudderSensor,
  steeringNoWayToLetGo,
  steeringOutputOfAnotherKind,
  steeringRudderSensorNotHeard,
];
