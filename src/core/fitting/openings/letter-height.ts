import { viewing } from '../../facts/opening-figures.ts';

/** Height of letters that are seen under the angle wanted from so far, mm. */
export const letterHeightMm = (distanceM: number): number =>
  distanceM * 1000 * Math.tan((viewing.letters.value / 60) * (Math.PI / 180));

/** Height below which letters are not read from so far, mm. */
export const letterFloorMm = (distanceM: number): number => distanceM * viewing.lettersFloor.value;
