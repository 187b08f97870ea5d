import type { Fault } from '../../fault.ts';
import { phasesBoughtTwice } from './bought-twice.ts';
import { phasesMustWaitsForLater } from './must-waits-for-later.ts';
import { phasesNothingProvided } from './nothing-provided.ts';

/** The faults of this area, one a rule. */
export const phasesFaults: readonly Fault[] = [phasesBoughtTwice, phasesMustWaitsForLater, phasesNothingProvided];
