import type { Fault } from '../../fault.ts';
import { trafficBusTooFull } from './bus-too-full.ts';
import { trafficMessageWaitsPastItsTurn } from './message-waits-past-its-turn.ts';
import { trafficSensorLeftFast } from './sensor-left-fast.ts';

/** The faults of this area, one a rule. */
export const trafficFaults: readonly Fault[] = [
  trafficBusTooFull,
  trafficMessageWaitsPastItsTurn,
  trafficSensorLeftFast,
];
