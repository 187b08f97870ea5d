import type { Rule } from '../rule.ts';
import { jointInTheWet } from './joint-in-the-wet.ts';
import { orderedForNothing } from './ordered-for-nothing.ts';
import { orderedTooFew } from './ordered-too-few.ts';
import { piecesTooShort } from './pieces-too-short.ts';

/** The rules of this area. */
export const shoppingRules: readonly Rule[] = [jointInTheWet, orderedForNothing, orderedTooFew, piecesTooShort];
