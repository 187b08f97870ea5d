import type { BoatIndex } from '../boat/boat-index.ts';
import type { GradeId } from '../boat/boat-schema.ts';
import { limitIn } from '../boat/limit-in.ts';
import { busLimits } from '../facts/bus-limits.ts';
import { deviceFuses } from '../facts/fuses.ts';

/** The largest fuse that is not above what a leg of the bus cable carries, A; absent where none is made so small. */
export const busFuseA = ({ boat }: Pick<BoatIndex, 'boat'>, grade: GradeId): number | undefined => {
  const carriesA = limitIn(busLimits, boat, `nmea2000-current-${grade}`);
  return deviceFuses.stepsA.findLast((stepA) => stepA <= carriesA);
};
