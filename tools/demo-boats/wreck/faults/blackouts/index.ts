import type { Fault } from '../../fault.ts';
import { blackoutsOneFailureTakesTheLast } from './one-failure-takes-the-last.ts';

/** Faults of what one failure takes. */
export const blackoutFaults: readonly Fault[] = [blackoutsOneFailureTakesTheLast];
