import { depthFigures } from '../../facts/depth-figures.ts';

/** What a screen shows where sensor and screen both add an offset, and what that is. */
export interface OffsetTwice {
  /** depth the screen shows */
  readonly shownM: number;
  /** `double offset`: the same offset is added in both; `two offsets`: both add one, and they differ */
  readonly finding?: 'double offset' | 'two offsets';
}

/**
 * The depth on a screen that adds an offset of its own to one the sensor has added already. A depth that is right once the
 * sensor has spoken is wrong by the screen's offset: towards too little water where it goes to the keel, too much where it
 * goes to the surface. Offsets up to a centimetre apart are the same one, measured twice.
 *
 * @example offsetTwice({ depthM: 2.65, sensorOffsetM: -1.35, displayOffsetM: -1.35 }) // { shownM: 1.3, finding: 'double offset' }
 */
export const offsetTwice = ({
  depthM,
  sensorOffsetM,
  displayOffsetM,
}: {
  /** true depth in the reference the sensor's offset gives */
  readonly depthM: number;
  readonly sensorOffsetM: number;
  readonly displayOffsetM: number;
}): OffsetTwice => {
  const shownM = depthM + displayOffsetM;
  if (sensorOffsetM === 0 || displayOffsetM === 0) return { shownM };
  const apartM = Math.abs(sensorOffsetM - displayOffsetM);
  return { shownM, finding: apartM <= depthFigures.sameOffset.value ? 'double offset' : 'two offsets' };
};
