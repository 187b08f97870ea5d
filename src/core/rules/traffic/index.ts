import type { Rule } from '../rule.ts';
import { busTooFull } from './bus-too-full.ts';
import { messageWaitsPastItsTurn } from './message-waits-past-its-turn.ts';
import { sensorLeftFast } from './sensor-left-fast.ts';

/** The rules of this area. */
export const trafficRules: readonly Rule[] = [busTooFull, messageWaitsPastItsTurn, sensorLeftFast];
