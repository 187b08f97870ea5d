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
  /** beside the view from the side or, on a narrow sheet, under the one from above; absent where a boat needs none */
  readonly astern?: AsternFrame;
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

/** Where the boat stands as seen from behind her. */
export interface AsternFrame extends Band {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly centreMm: number;
  readonly waterMm: number;
}

/** Height of the parts that do not scale with the boat. */
const fixedMm = { axis: 8, overSide: 1.5, underSide: 3, overTop: 2.5, underTop: 4, overAstern: 3 };

/** Share of the boat's length where shortening starts. */
const breakShare = 0.42;

/** How high the drawing may rise in all, as shares of the boat's length: less where the sheet is low. */
const heightShares = [0.66, 0.6, 0.54, 0.48];

/** A boat drawn this long is read with ease; until then tall masts are shortened further. */
const easyLengthMm = 150;

/** A boat drawn shorter than this is too small to read, and the sheet grows instead. */
const leastLengthMm = 115;

/** So many places find room on that; each place more wants its own. */
const fewPlaces = 8;
const perPlaceMm = 5;

/** Free room beside and between the views that stand side by side, at the most and at the least. */
const besideMm = { most: 42, least: 14 };

/** How far the parts of a boat reach from the corner of her transom at the waterline, in metres. */
interface Reach {
  readonly sternM: number;
  readonly spanM: number;
  readonly highestM: number;
  readonly lowestM: number;
  readonly halfBeamM: number;
}

const reachOf = ({ hull, places }: Boat): Reach => {
  const sternM = Math.min(-0.06 * hull.lengthM, ...places.map((place) => place.xM));
  return {
    sternM,
    spanM: Math.max(hull.lengthM * 1.01, ...places.map((place) => place.xM)) - sternM,
    highestM: Math.max(hull.airDraft.valueM, ...places.map((place) => place.zM + 0.3)),
    lowestM: Math.max(hull.draftM, ...places.map((place) => 0.3 - place.zM)),
    halfBeamM: Math.max(hull.beamM / 2, ...places.map((place) => Math.abs(place.yM) + 0.1)),
  };
};

const twoHullsOrMasts: ReadonlySet<Boat['hull']['kind']> = new Set(['sloop', 'ketch', 'catamaran']);

/** Masts and two hulls hide behind themselves from the side; such a boat is drawn from astern as well. */
const needsAstern = (boat: Boat): boolean =>
  twoHullsOrMasts.has(boat.hull.kind) || boat.ways.some((way) => way.kind === 'mast');

interface Shortening {
  readonly breakM: number;
  readonly shortening: number;
}

const shorteningTo = (share: number, { lengthM, highestM }: { lengthM: number; highestM: number }): Shortening => {
  const breakM = lengthM * breakShare;
  const mostM = lengthM * share;
  return highestM <= mostM
    ? { breakM: highestM, shortening: 1 }
    : { breakM, shortening: (mostM - breakM) / (highestM - breakM) };
};

/** Too narrow for a strip that lies along the boat. */
export const isNarrow = (widthMm: number): boolean => widthMm < 150;

/** A height in metres above the waterline as it is drawn, tall masts shortened above `breakM`. */
export const drawnHeightM = ({ breakM, shortening }: Shortening, zM: number): number =>
  zM <= breakM ? zM : breakM + (zM - breakM) * shortening;

/** The other way round: the height that is drawn so high. */
export const heightOfDrawnM = ({ breakM, shortening }: Shortening, drawnM: number): number =>
  drawnM <= breakM ? drawnM : breakM + (drawnM - breakM) / shortening;

interface Room {
  readonly boat: Boat;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly belowMm: number;
}

interface Fit extends Shortening {
  readonly mmPerM: number;
  readonly widthMm: number;
}

/** Scale and shortening: as large as the sheet allows, never smaller than can be read. */
const fitBoat = ({ boat, widthMm, heightMm, belowMm }: Room, reach: Reach): Fit => {
  const { lengthM } = boat.hull;
  const narrow = isNarrow(widthMm);
  const beside = needsAstern(boat) && !narrow;
  const acrossM = reach.spanM + (beside ? 2 * reach.halfBeamM : 0);
  const marginMm = narrow ? 5 : 12;
  const freeMm = 2 * marginMm + (beside ? 2 * besideMm.least : 0);
  const byWidth = (widthMm - freeMm) / acrossM;
  const fixed = fixedMm.axis + fixedMm.overSide + fixedMm.underSide + fixedMm.overTop + fixedMm.underTop;
  const fits = heightShares.map((share) => {
    const short = shorteningTo(share, { lengthM, highestM: reach.highestM });
    const tallM = drawnHeightM(short, reach.highestM) + reach.lowestM + 2 * reach.halfBeamM;
    return { ...short, mmPerM: (heightMm - fixed - belowMm) / tallM };
  });
  const easy = fits.find((fit) => fit.mmPerM * reach.spanM >= Math.min(easyLengthMm, byWidth * reach.spanM));
  const chosen = narrow ? fits[0] : (easy ?? fits.at(-1));
  const { mmPerM: byHeight, ...short } = chosen ?? { breakM: lengthM, shortening: 1, mmPerM: byWidth };
  if (narrow) return { ...short, mmPerM: byWidth, widthMm };
  const crowdMm = perPlaceMm * (boat.places.length - fewPlaces);
  const least = Math.max(leastLengthMm, crowdMm) / reach.spanM;
  const mmPerM = Math.max(least, Math.min(byWidth, byHeight));
  return { ...short, mmPerM, widthMm: Math.max(widthMm, acrossM * mmPerM + freeMm) };
};

/** The views that stand side by side share what room is left evenly, up to what is seen as one picture. */
const acrossSheet = (boat: Boat, reach: Reach, { mmPerM, widthMm }: Fit): { zeroMm: number; asternMm?: number } => {
  const spanMm = reach.spanM * mmPerM;
  const beamMm = 2 * reach.halfBeamM * mmPerM;
  if (!needsAstern(boat) || isNarrow(widthMm)) return { zeroMm: (widthMm - spanMm) / 2 - reach.sternM * mmPerM };
  const gapMm = Math.min(besideMm.most, (widthMm - spanMm - beamMm) / 3);
  const leftMm = (widthMm - spanMm - beamMm - gapMm) / 2;
  return { zeroMm: leftMm + beamMm + gapMm - reach.sternM * mmPerM, asternMm: leftMm + beamMm / 2 };
};

/**
 * Fits the boat into the sheet: as large as width and height allow, the same scale in every view. Sheets of long and
 * crowded boats grow wider than asked. `belowMm` is the room kept under the views for strip, curve and key.
 */
export const sheetFrame = (room: Room): SheetFrame => {
  const { boat, heightMm } = room;
  const reach = reachOf(boat);
  const fit = fitBoat(room, reach);
  const { mmPerM, widthMm, breakM, shortening } = fit;
  const narrow = isNarrow(widthMm);
  const aboveMm = drawnHeightM(fit, reach.highestM) * mmPerM;
  const deepMm = reach.lowestM * mmPerM;
  const { zeroMm, asternMm } = acrossSheet(boat, reach, fit);
  const halfMm = reach.halfBeamM * mmPerM;
  const waterMm = fixedMm.axis + fixedMm.overSide + aboveMm;
  const side = { topMm: fixedMm.axis, bottomMm: waterMm + deepMm + fixedMm.underSide };
  const centreMm = side.bottomMm + fixedMm.overTop + halfMm;
  const top = { topMm: side.bottomMm, bottomMm: centreMm + halfMm + fixedMm.underTop };
  const beside: AsternFrame | undefined =
    asternMm === undefined
      ? undefined
      : {
          ...side,
          waterMm,
          leftMm: 2,
          rightMm: (asternMm + halfMm + zeroMm + reach.sternM * mmPerM) / 2,
          centreMm: asternMm,
        };
  const underWaterMm = top.bottomMm + fixedMm.overAstern + aboveMm;
  const under: AsternFrame = {
    topMm: top.bottomMm,
    bottomMm: underWaterMm + deepMm + fixedMm.underSide,
    leftMm: 2,
    rightMm: widthMm - 2,
    centreMm: widthMm / 2,
    waterMm: underWaterMm,
  };
  const astern = narrow && needsAstern(boat) ? under : beside;
  return {
    widthMm,
    heightMm,
    mmPerM,
    zeroMm,
    lengthMm: boat.hull.lengthM * mmPerM,
    waterMm,
    centreMm,
    breakM,
    shortening,
    side,
    top,
    ...(astern === undefined ? {} : { astern }),
    belowMm: Math.max(top.bottomMm, narrow ? (astern?.bottomMm ?? 0) : 0),
    narrow,
    radiusMm: narrow ? 2.4 : 2.6,
  };
};
