import type { Fault } from '../../fault.ts';
import { wiringBaudDiffers } from './baud-differs.ts';
import { wiringTwoTalkersOnOnePair } from './two-talkers-on-one-pair.ts';

/** The faults of this area, one a rule. */
export const wiringFaults: readonly Fault[] = [wiringBaudDiffers, wiringTwoTalkersOnOnePair];
