import type { Rule } from '../rule.ts';
import { besideTheKeel } from './beside-the-keel.ts';
import { hullDoesNotSuit } from './hull-does-not-suit.ts';
import { inputDoesNotFit } from './input-does-not-fit.ts';
import { leans } from './leans.ts';
import { nearThePropeller } from './near-the-propeller.ts';
import { noHeadroom } from './no-headroom.ts';
import { notMeasured } from './not-measured.ts';
import { oldHousing } from './old-housing.ts';
import { oneFrequencyTwice } from './one-frequency-twice.ts';
import { windNotClear } from './wind-not-clear.ts';

/** The rules of this area. */
export const sensorsRules: readonly Rule[] = [
  besideTheKeel,
  hullDoesNotSuit,
  inputDoesNotFit,
  leans,
  nearThePropeller,
  noHeadroom,
  notMeasured,
  oldHousing,
  oneFrequencyTwice,
  windNotClear,
];
