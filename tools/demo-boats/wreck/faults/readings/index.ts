import type { Fault } from '../../fault.ts';
import { readingsAisNamesMissing } from './ais-names-missing.ts';
import { readingsBackupReadsDifferently } from './backup-reads-differently.ts';
import { readingsChosenSourceSilent } from './chosen-source-silent.ts';
import { readingsLostWithTheRefit } from './lost-with-the-refit.ts';
import { readingsNeededButMissing } from './needed-but-missing.ts';
import { readingsOffsetTwice } from './offset-twice.ts';
import { readingsOneOfTwoLost } from './one-of-two-lost.ts';
import { readingsReferenceUnknown } from './reference-unknown.ts';
import { readingsSeveralForOneNeed } from './several-for-one-need.ts';
import { readingsTrueWindFromGround } from './true-wind-from-ground.ts';
import { readingsTrueWindOfTwoKinds } from './true-wind-of-two-kinds.ts';
import { readingsVariationMissing } from './variation-missing.ts';
import { readingsWindDirectionWithoutHeading } from './wind-direction-without-heading.ts';

/** The faults of this area, one a rule. */
export const readingsFaults: readonly Fault[] = [
  readingsAisNamesMissing,
  readingsBackupReadsDifferently,
  readingsChosenSourceSilent,
  readingsLostWithTheRefit,
  readingsNeededButMissing,
  readingsOffsetTwice,
  readingsOneOfTwoLost,
  readingsReferenceUnknown,
  readingsSeveralForOneNeed,
  readingsTrueWindFromGround,
  readingsTrueWindOfTwoKinds,
  readingsVariationMissing,
  readingsWindDirectionWithoutHeading,
];
