import type { Rule } from '../rule.ts';
import { baudDiffers } from './baud-differs.ts';
import { twoTalkersOnOnePair } from './two-talkers-on-one-pair.ts';

/** The rules of this area. */
export const wiringRules: readonly Rule[] = [baudDiffers, twoTalkersOnOnePair];
