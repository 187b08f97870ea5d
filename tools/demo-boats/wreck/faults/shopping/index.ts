import type { Fault } from '../../fault.ts';
import { shoppingJointInTheWet } from './joint-in-the-wet.ts';
import { shoppingOrderedForNothing } from './ordered-for-nothing.ts';
import { shoppingOrderedTooFew } from './ordered-too-few.ts';
import { shoppingPiecesTooShort } from './pieces-too-short.ts';

/** The faults of this area, one a rule. */
export const shoppingFaults: readonly Fault[] = [
  shoppingJointInTheWet,
  shoppingOrderedForNothing,
  shoppingOrderedTooFew,
  shoppingPiecesTooShort,
];
