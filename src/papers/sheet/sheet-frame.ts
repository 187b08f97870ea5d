import type { Boat } from '../../core/boat/boat-schema.ts';

/** Where the parts of the sheet lie, in millimetres, and the scale all of them share. */
export interface SheetFrame {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly mmPerM: number;
  /** the sheet's x of the transom */
  readonly zeroMm: number;
  /** length of the boat on the sheet */
  readonly lengthMm: number;
  readonly waterMm: number;
  readonly centreMm: number;
  /** heights above this, in metres, are drawn shortened */
  readonly breakM: number;
  readonly shortening: number;
  readonly side: Band;
  readonly top: Band;
  readonly belowMm: number;
  /** too narrow for words beside the balloons: the strip stands upright below */
  readonly narrow: boolean;
  /** of a balloon in the two views */
  readonly radiusMm: number;
}

export interface Band {
  readonly topMm: number;
  readonly bottomMm: number;
}

/** Height of the parts that do not scale with the boat. */
export const fixedMm = { axis: 8, overSide: 1.5, underSide: 3, overTop: 2.5, underTop: 4 };

/** Shares of the boat's length: where shortening starts, and how high the drawing may rise in all. */
const heightShare = { start: 0.42, most: 0.66 };

/** A boat drawn shorter than this is too small to read, and the sheet grows taller instead. */
const leastLengthMm = 125;

const highestM = (boat: Boat): number =>
  Math.max(boat.hull.airDraft.valueM, ...boat.places.map((place) => place.zM + 0.3));
const lowestM = (boat: Boat): number => Math.max(boat.hull.draftM, ...boat.places.map((place) => 0.3 - place.zM));
const halfBeamM = (boat: Boat): number =>
  Math.max(boat.hull.beamM / 2, ...boat.places.map((place) => Math.abs(place.yM) + 0.1));
const sternM = (boat: Boat): number => Math.min(-0.06 * boat.hull.lengthM, ...boat.places.map((place) => place.xM));
const stemM = (boat: Boat): number => Math.max(boat.hull.lengthM * 1.01, ...boat.places.map((place) => place.xM));

const shorteningOf = (boat: Boat): { breakM: number; shortening: number } => {
  const { lengthM } = boat.hull;
  const breakM = lengthM * heightShare.start;
  const topM = highestM(boat);
  const mostM = lengthM * heightShare.most;
  return topM <= mostM ? { breakM: topM, shortening: 1 } : { breakM, shortening: (mostM - breakM) / (topM - breakM) };
};

/** Too narrow for a strip that lies along the boat. */
export const isNarrow = (widthMm: number): boolean => widthMm < 150;

/** A height in metres above the waterline as it is drawn, tall masts shortened above `breakM`. */
export const drawnHeightM = ({ breakM, shortening }: { breakM: number; shortening: number }, zM: number): number =>
  zM <= breakM ? zM : breakM + (zM - breakM) * shortening;

/**
 * Fits the boat into the sheet: as large as width and height allow, the same scale in every view.
 * `belowMm` is the room kept under the two views for strip, curve and key.
 */
export const sheetFrame = ({
  boat,
  widthMm,
  heightMm,
  belowMm,
}: {
  boat: Boat;
  widthMm: number;
  heightMm: number;
  belowMm: number;
}): SheetFrame => {
  const narrow = isNarrow(widthMm);
  const marginMm = narrow ? 5 : 12;
  const spanM = stemM(boat) - sternM(boat);
  const short = shorteningOf(boat);
  const aboveM = drawnHeightM(short, highestM(boat));
  const belowM = lowestM(boat);
  const tallM = aboveM + belowM + 2 * halfBeamM(boat);
  const fixed = fixedMm.axis + fixedMm.overSide + fixedMm.underSide + fixedMm.overTop + fixedMm.underTop;
  const byWidth = (widthMm - 2 * marginMm) / spanM;
  const byHeight = (heightMm - fixed - belowMm) / tallM;
  const least = leastLengthMm / spanM;
  const mmPerM = narrow ? byWidth : Math.min(byWidth, Math.max(byHeight, least));
  const zeroMm = (widthMm - spanM * mmPerM) / 2 - sternM(boat) * mmPerM;
  const sideTop = fixedMm.axis;
  const waterMm = sideTop + fixedMm.overSide + aboveM * mmPerM;
  const sideBottom = waterMm + belowM * mmPerM + fixedMm.underSide;
  const centreMm = sideBottom + fixedMm.overTop + halfBeamM(boat) * mmPerM;
  const topBottom = centreMm + halfBeamM(boat) * mmPerM + fixedMm.underTop;
  return {
    widthMm,
    heightMm,
    mmPerM,
    zeroMm,
    lengthMm: boat.hull.lengthM * mmPerM,
    waterMm,
    centreMm,
    ...short,
    side: { topMm: sideTop, bottomMm: sideBottom },
    top: { topMm: sideBottom, bottomMm: topBottom },
    belowMm: topBottom,
    narrow,
    radiusMm: narrow ? 2.4 : 2.6,
  };
};
