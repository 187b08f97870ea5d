import type { Rule } from '../rule.ts';
import { boughtTwice } from './bought-twice.ts';
import { mustWaitsForLater } from './must-waits-for-later.ts';
import { nothingProvided } from './nothing-provided.ts';

/** The rules of this area. */
export const phasesRules: readonly Rule[] = [boughtTwice, mustWaitsForLater, nothingProvided];
