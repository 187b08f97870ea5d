import type { Rule } from '../rule.ts';
import { aisNamesMissing } from './ais-names-missing.ts';
import { lostWithTheRefit } from './lost-with-the-refit.ts';
import { neededButMissing } from './needed-but-missing.ts';
import { oneOfTwoLost } from './one-of-two-lost.ts';
import { referenceUnknown } from './reference-unknown.ts';
import { severalForOneNeed } from './several-for-one-need.ts';
import { trueWindFromGround } from './true-wind-from-ground.ts';

/** The rules of this area. */
export const readingsRules: readonly Rule[] = [
  aisNamesMissing,
  lostWithTheRefit,
  neededButMissing,
  oneOfTwoLost,
  referenceUnknown,
  severalForOneNeed,
  trueWindFromGround,
];
