import type { Fault } from '../../fault.ts';
import { wiringBaudDiffers } from './baud-differs.ts';
import { wiringLineKindsMeet } from './line-kinds-meet.ts';
import { wiringLineTooFull } from './line-too-full.ts';
import { wiringTooManyListeners } from './too-many-listeners.ts';
import { wiringTwoTalkersOnOnePair } from './two-talkers-on-one-pair.ts';

/** The faults of this area, one a rule. */
export const wiringFaults: readonly Fault[] = [
  wiringBaudDiffers,
  wiringLineKindsMeet,
  wiringLineTooFull,
  wiringTooManyListeners,
  wiringTwoTalkersOnOnePair,
];
