import type { Rule } from '../rule.ts';
import { orderedForNothing } from './ordered-for-nothing.ts';
import { orderedTooFew } from './ordered-too-few.ts';
import { piecesTooShort } from './pieces-too-short.ts';

/** The rules of this area. */
export const shoppingRules: readonly Rule[] = [orderedForNothing, orderedTooFew, piecesTooShort];
