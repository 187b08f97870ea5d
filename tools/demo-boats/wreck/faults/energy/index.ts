import type { Fault } from '../../fault.ts';
import { energyBankTooSmall } from './bank-too-small.ts';
import { energyChargedTooLittle } from './charged-too-little.ts';
import { energyDrawNotKnown } from './draw-not-known.ts';
import { energyOneUnitTakesMost } from './one-unit-takes-most.ts';

/** The faults of this area, one a rule. */
export const energyFaults: readonly Fault[] = [
  energyBankTooSmall,
  energyChargedTooLittle,
  energyDrawNotKnown,
  energyOneUnitTakesMost,
];
