import type { Rule } from '../rule.ts';
import { busTooFull } from './bus-too-full.ts';

/** The rules of this area. */
export const trafficRules: readonly Rule[] = [busTooFull];
