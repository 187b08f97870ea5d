import type { Rule } from '../rule.ts';
import { clutchNotServed } from './clutch-not-served.ts';
import { clutchStaysEngaged } from './clutch-stays-engaged.ts';
import { driveDrawsTooMuch } from './drive-draws-too-much.ts';
import { driveNotKnown } from './drive-not-known.ts';
import { driveTooSmall } from './drive-too-small.ts';
import { leadsLoseTooMuch } from './leads-lose-too-much.ts';
import { motorVoltsDiffer } from './motor-volts-differ.ts';
import { noRudderSensor } from './no-rudder-sensor.ts';
import { noWayToLetGo } from './no-way-to-let-go.ts';
import { outputOfAnotherKind } from './output-of-another-kind.ts';
import { rudderSensorNotHeard } from './rudder-sensor-not-heard.ts';

/** The rules of this area. */
export const steeringRules: readonly Rule[] = [
  clutchNotServed,
  clutchStaysEngaged,
  driveDrawsTooMuch,
  driveNotKnown,
  driveTooSmall,
  leadsLoseTooMuch,
  motorVoltsDiffer,
  noRudderSensor,
  noWayToLetGo,
  outputOfAnotherKind,
  rudderSensorNotHeard,
];
