import type { Opening } from '../../boat/opening.ts';
import { usualViewingM } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { letterFloorMm, letterHeightMm } from './letter-height.ts';
import type { FaceSheet } from './opening-case.ts';

/** How a face is seen and reached; undefined where nobody measured from where, and its sheet says nothing of its letters. */
export const viewOf = (viewed: Opening['viewed'], sheet: FaceSheet): FitEntry['view'] | undefined => {
  const hasMm = sheet.face?.letterMm;
  if (viewed === undefined && hasMm === undefined) return undefined;
  const distanceM = viewed?.distanceM ?? usualViewingM.value;
  const above = viewed?.eyeAboveM;
  return {
    lettersMm: letterHeightMm(distanceM),
    floorMm: letterFloorMm(distanceM),
    ...(hasMm === undefined ? {} : { hasMm }),
    ...(above === undefined || distanceM === 0
      ? {}
      : { belowEyeDeg: (Math.asin(Math.max(-1, Math.min(1, above / distanceM))) * 180) / Math.PI }),
    ...(viewed?.reachM === undefined ? {} : { reachMm: viewed.reachM * 1000 }),
  };
};
