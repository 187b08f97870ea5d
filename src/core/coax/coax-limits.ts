import type { Boat } from '../boat/boat-schema.ts';
import { keptFor } from '../boat/kept-for.ts';
import { limitValue } from '../boat/limit-value.ts';
import { coaxJoints, radioMhz } from '../facts/coax.ts';
import type { CoaxLimits } from './coax-verdict.ts';

/** What coax may lose on one boat, and what a joint of it is taken to lose. */
export interface CoaxRules extends CoaxLimits {
  readonly soundDb: number;
  readonly weatheredDb: number;
}

export const coaxRules = keptFor(
  (boat: Boat): CoaxRules => ({
    newAimDb: limitValue(boat, 'coax-new-aim'),
    newMostDb: limitValue(boat, 'coax-new-most'),
    keptMostDb: limitValue(boat, 'coax-kept-most'),
    soundDb: limitValue(boat, 'coax-joint-sound'),
    weatheredDb: limitValue(boat, 'coax-joint-weathered'),
  }),
);

/** A weathered joint loses more as the frequency rises: by the printed steps at 450 and 850 MHz. */
export const weatheredJointDb = ({ weatheredDb }: CoaxRules, mhz: number): number => {
  if (mhz > (radioMhz.voice.value + 850) / 2) return Math.max(weatheredDb, coaxJoints.weatheredAt850.value);
  return mhz > 300 ? Math.max(weatheredDb, coaxJoints.weatheredAt450.value) : weatheredDb;
};
