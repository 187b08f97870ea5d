import type { Rule } from '../rule.ts';
import { baudDiffers } from './baud-differs.ts';
import { lineKindsMeet } from './line-kinds-meet.ts';
import { lineTooFull } from './line-too-full.ts';
import { tooManyListeners } from './too-many-listeners.ts';
import { twoTalkersOnOnePair } from './two-talkers-on-one-pair.ts';

/** The rules of this area. */
export const wiringRules: readonly Rule[] = [
  baudDiffers,
  lineKindsMeet,
  lineTooFull,
  tooManyListeners,
  twoTalkersOnOnePair,
];
