import { type SheetName, sheetBorders, sheetSizes } from '../../core/facts/sheet-sizes.ts';
import { titleStripMm } from './title-block.ts';

/** Where the parts of a sheet lie, millimetres from its top left corner. */
export interface SheetArea {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly frame: {
    readonly leftMm: number;
    readonly topMm: number;
    readonly widthMm: number;
    readonly heightMm: number;
  };
  /** inside the frame, over the title block: what a drawing may use, its own origin at this corner */
  readonly content: {
    readonly leftMm: number;
    readonly topMm: number;
    readonly widthMm: number;
    readonly heightMm: number;
  };
}

/** Air between the frame and a drawing. */
const airMm = 2;

/** The frame of a named paper and the room in it. */
export const sheetArea = (paper: SheetName): SheetArea => {
  const { widthMm, heightMm } = sheetSizes[paper];
  const { boundMm, otherMm } = sheetBorders;
  const frame = {
    leftMm: boundMm,
    topMm: otherMm,
    widthMm: widthMm - boundMm - otherMm,
    heightMm: heightMm - 2 * otherMm,
  };
  return {
    widthMm,
    heightMm,
    frame,
    content: {
      leftMm: frame.leftMm + airMm,
      topMm: frame.topMm + airMm,
      widthMm: frame.widthMm - 2 * airMm,
      heightMm: frame.heightMm - titleStripMm - 2 * airMm,
    },
  };
};
