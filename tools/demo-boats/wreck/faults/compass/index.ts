import type { Fault } from '../../fault.ts';
import { compassPairTooNear } from './pair-too-near.ts';
import { compassPlateNotRead } from './plate-not-read.ts';
import { compassSingleWireNear } from './single-wire-near.ts';
import { compassUnitTooNear } from './unit-too-near.ts';

/** Faults of compasses. */
export const compassFaults: readonly Fault[] = [
  compassPairTooNear,
  compassPlateNotRead,
  compassSingleWireNear,
  compassUnitTooNear,
];
