import type { Fault } from '../../fault.ts';
import { compassHeadingSensorInSteel } from './heading-sensor-in-steel.ts';
import { compassHeadingSensorTooNear } from './heading-sensor-too-near.ts';
import { compassNoSwingPlanned } from './no-swing-planned.ts';
import { compassPairTooNear } from './pair-too-near.ts';
import { compassPlateNotRead } from './plate-not-read.ts';
import { compassSingleWireNear } from './single-wire-near.ts';
import { compassUnitTooNear } from './unit-too-near.ts';
import { compassUnitsNotRead } from './units-not-read.ts';
import { compassWireTurnsHeadingSensor } from './wire-turns-heading-sensor.ts';

/** Faults of compasses and heading sensors. */
export const compassFaults: readonly Fault[] = [
  compassHeadingSensorInSteel,
  compassHeadingSensorTooNear,
  compassNoSwingPlanned,
  compassPairTooNear,
  compassPlateNotRead,
  compassSingleWireNear,
  compassUnitTooNear,
  compassUnitsNotRead,
  compassWireTurnsHeadingSensor,
];
