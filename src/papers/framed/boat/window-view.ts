import type { Box } from '../../drawing/box.ts';
import type { Point } from '../../drawing/point.ts';
import { drawnHeightM } from '../../sheet/sheet-frame.ts';
import type { View } from '../../sheet/view.ts';

/** How far the boat reaches in one view, in metres: along her, and across the sheet. */
export interface ViewReach {
  readonly view: 'side' | 'top';
  readonly fromM: number;
  readonly toM: number;
  /** lowest and highest for the view from the side; half a beam to each side for the one from above */
  readonly belowM: number;
  readonly aboveM: number;
  /** heights above this may be drawn shortened */
  readonly breakM: number;
}

/** The part of a view that one sheet shows. */
export interface WindowSpan {
  readonly reach: ViewReach;
  readonly fromM: number;
  readonly toM: number;
  /** which of how many, from the stern */
  readonly at: number;
  readonly of: number;
}

/** A window on the sheet: its view, what may be drawn on, and where it goes on. */
export interface WindowView extends View {
  readonly mmPerM: number;
  readonly span: WindowSpan;
  /** x of the match lines; absent at the ends of the boat */
  readonly sternMatchMm?: number;
  readonly bowMatchMm?: number;
  /** share of its height a mast has above the break */
  readonly shortening: number;
}

/** Least share of a mast's height, so that spreaders and masthead stay apart. */
const leastMastMm = 26;

/** How high the view is at a scale, shortened as far as it may be. */
export const leastHeightMm = ({ belowM, aboveM, breakM }: ViewReach, mmPerM: number): number => {
  const mastMm = Math.max(0, aboveM - breakM) * mmPerM;
  return (belowM + Math.min(aboveM, breakM)) * mmPerM + Math.min(mastMm, leastMastMm);
};

/** The view of a window in a box of the sheet: the boat in the middle of it, masts shortened where they must be. */
export const windowView = (span: WindowSpan, box: Box, mmPerM: number): WindowView => {
  const { reach, fromM, toM } = span;
  const heightMm = box.bottomMm - box.topMm;
  const wholeMm = (reach.belowM + reach.aboveM) * mmPerM;
  const mastM = reach.aboveM - reach.breakM;
  const overMm = heightMm - (reach.belowM + reach.breakM) * mmPerM;
  const shortening = wholeMm <= heightMm || mastM <= 0 ? 1 : overMm / (mastM * mmPerM);
  const drawnMm = (reach.belowM + drawnHeightM({ breakM: reach.breakM, shortening }, reach.aboveM)) * mmPerM;
  const zeroYMm = box.bottomMm - (heightMm - drawnMm) / 2 - reach.belowM * mmPerM;
  const middleMm = (box.leftMm + box.rightMm) / 2;
  const zeroXMm = middleMm - ((fromM + toM) / 2) * mmPerM;
  const xOf = (xM: number): number => zeroXMm + xM * mmPerM;
  const point = (xM: number, secondM: number): Point => [
    xOf(xM),
    reach.view === 'side'
      ? zeroYMm - drawnHeightM({ breakM: reach.breakM, shortening }, secondM) * mmPerM
      : zeroYMm + secondM * mmPerM,
  ];
  return {
    name: reach.view,
    box,
    mmPerM,
    span,
    shortening,
    point,
    at: (place) => point(place.xM, reach.view === 'side' ? place.zM : place.yM),
    ...(span.at === 0 ? {} : { sternMatchMm: xOf(fromM) }),
    ...(span.at === span.of - 1 ? {} : { bowMatchMm: xOf(toM) }),
  };
};

/** What of the boat is drawn in a window: up to its match lines. */
export const drawnBox = ({ box, sternMatchMm, bowMatchMm }: WindowView): Box => ({
  ...box,
  leftMm: sternMatchMm ?? box.leftMm,
  rightMm: bowMatchMm ?? box.rightMm,
});
