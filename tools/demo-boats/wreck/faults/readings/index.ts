import type { Fault } from '../../fault.ts';
import { readingsAisNamesMissing } from './ais-names-missing.ts';
import { readingsNeededButMissing } from './needed-but-missing.ts';

/** The faults of this area, one a rule. */
export const readingsFaults: readonly Fault[] = [readingsAisNamesMissing, readingsNeededButMissing];
