import type { Rule } from '../rule.ts';
import { aisNamesMissing } from './ais-names-missing.ts';
import { backupReadsDifferently } from './backup-reads-differently.ts';
import { chosenSourceSilent } from './chosen-source-silent.ts';
import { lostWithTheRefit } from './lost-with-the-refit.ts';
import { neededButMissing } from './needed-but-missing.ts';
import { offsetTwice } from './offset-twice.ts';
import { oneOfTwoLost } from './one-of-two-lost.ts';
import { referenceUnknown } from './reference-unknown.ts';
import { severalForOneNeed } from './several-for-one-need.ts';
import { trueWindFromGround } from './true-wind-from-ground.ts';
import { trueWindOfTwoKinds } from './true-wind-of-two-kinds.ts';
import { variationMissing } from './variation-missing.ts';
import { windDirectionWithoutHeading } from './wind-direction-without-heading.ts';

/** The rules of this area. */
export const readingsRules: readonly Rule[] = [
  aisNamesMissing,
  backupReadsDifferently,
  chosenSourceSilent,
  lostWithTheRefit,
  neededButMissing,
  offsetTwice,
  oneOfTwoLost,
  referenceUnknown,
  severalForOneNeed,
  trueWindFromGround,
  trueWindOfTwoKinds,
  variationMissing,
  windDirectionWithoutHeading,
];
