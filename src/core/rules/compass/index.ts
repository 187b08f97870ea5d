import type { Rule } from '../rule.ts';
import { pairTooNear } from './pair-too-near.ts';
import { plateNotRead } from './plate-not-read.ts';
import { singleWireNear } from './single-wire-near.ts';
import { unitTooNear } from './unit-too-near.ts';

/** The rules of this area. */
export const compassRules: readonly Rule[] = [pairTooNear, plateNotRead, singleWireNear, unitTooNear];
