import type { Boat } from '../../../core/boat/boat-schema.ts';
import { leastHeightMm, type ViewReach, type WindowSpan } from './window-view.ts';

/** Round scales, largest drawing first: 1 to so many. */
const scales = [
  10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90, 100, 110, 125, 150, 175, 200, 250, 300, 400, 500,
];

/** Air beyond the ends of the boat, and above and below her, in metres. */
const airM = 0.25;

/** How far a match line may move from the even cut, as a share of a window. */
const mayMove = 0.08;

/** How far the boat reaches as seen from the side or from above, her places counted. */
export const reachIn = (view: 'side' | 'top', { hull, places }: Boat): ViewReach => {
  const along = {
    view,
    fromM: Math.min(-0.04 * hull.lengthM, ...places.map(({ xM }) => xM - airM)),
    toM: Math.max(hull.lengthM * 1.01, ...places.map(({ xM }) => xM + airM)),
  };
  if (view === 'top') {
    const halfM = Math.max(hull.beamM / 2, ...places.map(({ yM }) => Math.abs(yM))) + airM;
    return { ...along, belowM: halfM, aboveM: halfM, breakM: halfM };
  }
  const low = places.filter(({ reach }) => reach !== 'aloft');
  const aboveM = Math.max(hull.airDraft.valueM, ...places.map(({ zM }) => zM)) + airM;
  const breakM = Math.max(0.14 * hull.lengthM, ...low.map(({ zM }) => zM)) + 2 * airM;
  return {
    ...along,
    belowM: Math.max(hull.draftM, ...places.map(({ zM }) => -zM)) + airM,
    aboveM,
    breakM: Math.min(aboveM, breakM),
  };
};

/** The largest scale at which a view in so many windows fits into the room, as millimetres for a metre. */
export const scaleFor = (
  reach: ViewReach,
  windows: number,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): number => {
  const spanM = ((reach.toM - reach.fromM) / windows) * (windows === 1 ? 1 : 1 + 2 * mayMove);
  const scale = scales.find((one) => {
    const mmPerM = 1000 / one;
    return spanM * mmPerM <= widthMm && leastHeightMm(reach, mmPerM) <= heightMm;
  });
  return 1000 / (scale ?? scales.at(-1) ?? 1);
};

const tries = 21;
/** Where to cut near a length: as far from every place as can be. */
const cutNear = (wishM: number, windowM: number, { places }: Boat): number => {
  let best = { atM: wishM, freeM: -1 };
  for (let at = 0; at < tries; at++) {
    const atM = wishM + ((at / (tries - 1)) * 2 - 1) * mayMove * windowM;
    const freeM = Math.min(...places.map(({ xM }) => Math.abs(xM - atM))) - 0.15 * Math.abs(atM - wishM);
    if (freeM > best.freeM) best = { atM, freeM };
  }
  return best.atM;
};

/** The windows of a view from the stern forward. */
export const windowSpans = (reach: ViewReach, of: number, boat: Boat): WindowSpan[] => {
  const windowM = (reach.toM - reach.fromM) / of;
  const cuts = Array.from({ length: of + 1 }, (_, at) => {
    if (at === 0) return reach.fromM;
    return at === of ? reach.toM : cutNear(reach.fromM + at * windowM, windowM, boat);
  });
  return Array.from({ length: of }, (_, at) => ({
    reach,
    fromM: cuts[at] ?? reach.fromM,
    toM: cuts[at + 1] ?? reach.toM,
    at,
    of,
  }));
};
