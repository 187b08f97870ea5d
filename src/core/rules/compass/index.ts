import type { Rule } from '../rule.ts';
import { headingSensorInSteel } from './heading-sensor-in-steel.ts';
import { headingSensorTooNear } from './heading-sensor-too-near.ts';
import { noSwingPlanned } from './no-swing-planned.ts';
import { pairTooNear } from './pair-too-near.ts';
import { plateNotRead } from './plate-not-read.ts';
import { singleWireNear } from './single-wire-near.ts';
import { unitTooNear } from './unit-too-near.ts';
import { unitsNotRead } from './units-not-read.ts';
import { wireTurnsHeadingSensor } from './wire-turns-heading-sensor.ts';

/** The rules of this area. */
export const compassRules: readonly Rule[] = [
  headingSensorInSteel,
  headingSensorTooNear,
  noSwingPlanned,
  pairTooNear,
  plateNotRead,
  singleWireNear,
  unitTooNear,
  unitsNotRead,
  wireTurnsHeadingSensor,
];
