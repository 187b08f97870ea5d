import type { Fault } from '../../fault.ts';
import { trafficBusTooFull } from './bus-too-full.ts';

/** The faults of this area, one a rule. */
export const trafficFaults: readonly Fault[] = [trafficBusTooFull];
