import type { Rule } from '../rule.ts';
import { aisNamesMissing } from './ais-names-missing.ts';
import { neededButMissing } from './needed-but-missing.ts';

/** The rules of this area. */
export const readingsRules: readonly Rule[] = [aisNamesMissing, neededButMissing];
