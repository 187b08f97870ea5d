import type { Rule } from '../rule.ts';
import { neededButMissing } from './needed-but-missing.ts';

/** The rules of this area. */
export const readingsRules: readonly Rule[] = [neededButMissing];
