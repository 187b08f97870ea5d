import type { Fault } from '../../fault.ts';
import { shoppingOrderedForNothing } from './ordered-for-nothing.ts';
import { shoppingOrderedTooFew } from './ordered-too-few.ts';
import { shoppingPiecesTooShort } from './pieces-too-short.ts';

/** The faults of this area, one a rule. */
export const shoppingFaults: readonly Fault[] = [
  shoppingOrderedForNothing,
  shoppingOrderedTooFew,
  shoppingPiecesTooShort,
];
