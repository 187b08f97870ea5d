import type { Drive } from '../boat/drive.ts';
import type { OutputWanted } from '../drives-shape.ts';
import { usualOutputs } from '../facts/steering-figures.ts';
import { needsClutch, wantedKind } from './drive-checks.ts';

/**
 * The output that would work a drive: its volts and kind, the first of the usual peak currents that is enough, and a clutch
 * output where it has a clutch or a bypass.
 *
 * @example outputWanted({ type: 'linear', motorV: 12, runA: 5, peakA: 34 }).peakA // 40
 */
export const outputWanted = (drive: Drive): OutputWanted => {
  const peakA = usualOutputs.peaksA.find((usualA) => usualA >= drive.peakA);
  return {
    works: wantedKind(drive),
    motorV: drive.motorV,
    ...(peakA === undefined ? {} : { peakA }),
    clutch: needsClutch(drive),
    ...(drive.clutchV === undefined ? {} : { clutchV: drive.clutchV }),
    ...(drive.clutchA === undefined ? {} : { clutchA: drive.clutchA }),
  };
};
