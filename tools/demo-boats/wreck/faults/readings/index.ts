import type { Fault } from '../../fault.ts';
import { readingsAisNamesMissing } from './ais-names-missing.ts';
import { readingsLostWithTheRefit } from './lost-with-the-refit.ts';
import { readingsNeededButMissing } from './needed-but-missing.ts';
import { readingsOneOfTwoLost } from './one-of-two-lost.ts';
import { readingsReferenceUnknown } from './reference-unknown.ts';
import { readingsSeveralForOneNeed } from './several-for-one-need.ts';
import { readingsTrueWindFromGround } from './true-wind-from-ground.ts';

/** The faults of this area, one a rule. */
export const readingsFaults: readonly Fault[] = [
  readingsAisNamesMissing,
  readingsLostWithTheRefit,
  readingsNeededButMissing,
  readingsOneOfTwoLost,
  readingsReferenceUnknown,
  readingsSeveralForOneNeed,
  readingsTrueWindFromGround,
];
