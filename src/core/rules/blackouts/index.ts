import type { Rule } from '../rule.ts';
import { oneFailureTakesTheLast } from './one-failure-takes-the-last.ts';

/** The rules of this area. */
export const blackoutRules: readonly Rule[] = [oneFailureTakesTheLast];
