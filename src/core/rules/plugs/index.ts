import type { Rule } from '../rule.ts';
import { fixedLeadTooShort } from './fixed-lead-too-short.ts';
import { plugTooBigForTheWay } from './plug-too-big-for-the-way.ts';
import { sameGenderMeets } from './same-gender-meets.ts';

/** The rules of this area. */
export const plugsRules: readonly Rule[] = [fixedLeadTooShort, plugTooBigForTheWay, sameGenderMeets];
