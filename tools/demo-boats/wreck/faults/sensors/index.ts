import type { Fault } from '../../fault.ts';
import { sensorsBesideTheKeel } from './beside-the-keel.ts';
import { sensorsHullDoesNotSuit } from './hull-does-not-suit.ts';
import { sensorsInputDoesNotFit } from './input-does-not-fit.ts';
import { sensorsLeans } from './leans.ts';
import { sensorsNearThePropeller } from './near-the-propeller.ts';
import { sensorsNoHeadroom } from './no-headroom.ts';
import { sensorsNotMeasured } from './not-measured.ts';
import { sensorsOldHousing } from './old-housing.ts';
import { sensorsOneFrequencyTwice } from './one-frequency-twice.ts';
import { sensorsWindNotClear } from './wind-not-clear.ts';

/** Faults of sensors of depth, speed and wind. */
export const sensorsFaults: readonly Fault[] = [
  sensorsBesideTheKeel,
  sensorsHullDoesNotSuit,
  sensorsInputDoesNotFit,
  sensorsLeans,
  sensorsNearThePropeller,
  sensorsNoHeadroom,
  sensorsNotMeasured,
  sensorsOldHousing,
  sensorsOneFrequencyTwice,
  sensorsWindNotClear,
];
