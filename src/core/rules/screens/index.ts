import type { Rule } from '../rule.ts';
import { alarmNotQuietenedTogether } from './alarm-not-quietened-together.ts';
import { dimApart } from './dim-apart.ts';

/** The rules of this area. */
export const screensRules: readonly Rule[] = [alarmNotQuietenedTogether, dimApart];
