import type { Boat } from '../boat/boat-schema.ts';
import { keptFor } from '../boat/kept-for.ts';
import { limitIn } from '../boat/limit-in.ts';
import { antennaLimits } from '../facts/antenna-limits.ts';
import { coaxJoints, radioMhz } from '../facts/coax.ts';
import type { CoaxLimits } from './coax-verdict.ts';

/** What coax may lose on one boat, and what a joint of it is taken to lose. */
export interface CoaxRules extends CoaxLimits {
  readonly soundDb: number;
  readonly weatheredDb: number;
}

export const coaxRules = keptFor(
  (boat: Boat): CoaxRules => ({
    newAimDb: limitIn(antennaLimits, boat, 'coax-new-aim'),
    newMostDb: limitIn(antennaLimits, boat, 'coax-new-most'),
    keptMostDb: limitIn(antennaLimits, boat, 'coax-kept-most'),
    soundDb: limitIn(antennaLimits, boat, 'coax-joint-sound'),
    weatheredDb: limitIn(antennaLimits, boat, 'coax-joint-weathered'),
  }),
);

/** A weathered joint loses more as the frequency rises: by the printed steps at 450 and 850 MHz. */
export const weatheredJointDb = ({ weatheredDb }: CoaxRules, mhz: number): number => {
  if (mhz > (radioMhz.voice.value + 850) / 2) return Math.max(weatheredDb, coaxJoints.weatheredAt850.value);
  return mhz > 300 ? Math.max(weatheredDb, coaxJoints.weatheredAt450.value) : weatheredDb;
};
