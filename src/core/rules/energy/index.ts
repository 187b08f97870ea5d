import type { Rule } from '../rule.ts';
import { bankTooSmall } from './bank-too-small.ts';
import { chargedTooLittle } from './charged-too-little.ts';
import { drawNotKnown } from './draw-not-known.ts';
import { oneUnitTakesMost } from './one-unit-takes-most.ts';

/** The rules of this area. */
export const energyRules: readonly Rule[] = [bankTooSmall, chargedTooLittle, drawNotKnown, oneUnitTakesMost];
