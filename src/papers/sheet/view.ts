import type { Place } from '../../core/boat/boat-schema.ts';
import type { OutlineStep } from '../../core/facts/hull-patterns.ts';
import type { Box } from '../drawing/box.ts';
import type { PathStep } from '../drawing/path-data.ts';
import type { Point } from '../drawing/point.ts';
import { drawnHeightM, heightOfDrawnM, type SheetFrame } from './sheet-frame.ts';

/** One of the pictures of the boat, as a map from metres aboard to millimetres on the sheet. */
export interface View {
  readonly name: 'side' | 'top' | 'astern';
  readonly box: Box;
  readonly at: (place: Pick<Place, 'xM' | 'yM' | 'zM'>) => Point;
  /** the view's own two measures: x and z from the side, x and y from above, y and z from astern */
  readonly point: (acrossM: number, secondM: number) => Point;
}

/** A view of the sheet, which can be read the other way round as well. */
export interface ScaledView extends View {
  /** the other way round: the two measures that lie at a point of the sheet */
  readonly aboard: (point: Point) => readonly [acrossM: number, secondM: number];
  /** above this, heights are drawn shorter than they are; absent where none is */
  readonly breakMm?: number;
}

const bandBox = (frame: SheetFrame, name: 'side' | 'top'): Box => ({
  leftMm: name === 'side' && frame.astern !== undefined && !frame.narrow ? frame.astern.rightMm : 2,
  rightMm: frame.widthMm - 2,
  topMm: frame[name].topMm,
  bottomMm: frame[name].bottomMm,
});

/** Where a view starts to shorten a tall mast. */
const breakOf = (frame: SheetFrame, waterMm: number): Pick<ScaledView, 'breakMm'> =>
  frame.shortening === 1 ? {} : { breakMm: waterMm - frame.breakM * frame.mmPerM };

/** The boat seen from starboard, bow to the right. */
export const sideView = (frame: SheetFrame): ScaledView => {
  const point = (xM: number, zM: number): Point => [
    frame.zeroMm + xM * frame.mmPerM,
    frame.waterMm - drawnHeightM(frame, zM) * frame.mmPerM,
  ];
  return {
    name: 'side',
    box: bandBox(frame, 'side'),
    point,
    at: (place) => point(place.xM, place.zM),
    aboard: ([xMm, yMm]) => [
      (xMm - frame.zeroMm) / frame.mmPerM,
      heightOfDrawnM(frame, (frame.waterMm - yMm) / frame.mmPerM),
    ],
    ...breakOf(frame, frame.waterMm),
  };
};

/** The boat seen from above, bow to the right, so starboard lies below the centreline. */
export const topView = (frame: SheetFrame): ScaledView => {
  const point = (xM: number, yM: number): Point => [
    frame.zeroMm + xM * frame.mmPerM,
    frame.centreMm + yM * frame.mmPerM,
  ];
  return {
    name: 'top',
    box: bandBox(frame, 'top'),
    point,
    at: (place) => point(place.xM, place.yM),
    aboard: ([xMm, yMm]) => [(xMm - frame.zeroMm) / frame.mmPerM, (yMm - frame.centreMm) / frame.mmPerM],
  };
};

/** The boat seen from behind, port on the left; undefined where she needs no such view. */
export const asternView = (frame: SheetFrame): ScaledView | undefined => {
  const { astern } = frame;
  if (astern === undefined) return undefined;
  const point = (yM: number, zM: number): Point => [
    astern.centreMm + yM * frame.mmPerM,
    astern.waterMm - drawnHeightM(frame, zM) * frame.mmPerM,
  ];
  const { leftMm, rightMm, topMm, bottomMm } = astern;
  const box = { leftMm, rightMm, topMm, bottomMm };
  return {
    name: 'astern',
    box,
    point,
    at: (place) => point(place.yM, place.zM),
    aboard: ([xMm, yMm]) => [
      (xMm - astern.centreMm) / frame.mmPerM,
      heightOfDrawnM(frame, (astern.waterMm - yMm) / frame.mmPerM),
    ],
    ...breakOf(frame, astern.waterMm),
  };
};

/** An outline in metres as a path of the view. */
export const onView = (view: View, step: OutlineStep): PathStep => {
  switch (step[0]) {
    case 'Z':
      return step;
    case 'C':
      return ['C', ...view.point(step[1], step[2]), ...view.point(step[3], step[4]), ...view.point(step[5], step[6])];
    default:
      return [step[0], ...view.point(step[1], step[2])];
  }
};
