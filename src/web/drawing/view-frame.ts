/** A rectangle on the drawing, millimetres. */
export interface BoxMm {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface SheetSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** How the drawing lies under the window: a point p of it shows at scale x p + shift, in millimetres of the sheet. */
export interface ViewFrame {
  readonly scale: number;
  readonly shiftXMm: number;
  readonly shiftYMm: number;
}

/** The smallest box round all; undefined for none. */
export const boxRound = (boxes: readonly BoxMm[]): BoxMm | undefined => {
  if (boxes.length === 0) return undefined;
  const left = Math.min(...boxes.map((box) => box.xMm));
  const top = Math.min(...boxes.map((box) => box.yMm));
  const right = Math.max(...boxes.map((box) => box.xMm + box.widthMm));
  const bottom = Math.max(...boxes.map((box) => box.yMm + box.heightMm));
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top };
};

const isInside = (box: BoxMm, sheet: SheetSize, frame: ViewFrame): boolean => {
  const left = frame.scale * box.xMm + frame.shiftXMm;
  const top = frame.scale * box.yMm + frame.shiftYMm;
  return (
    left >= 0 &&
    top >= 0 &&
    left + frame.scale * box.widthMm <= sheet.widthMm &&
    top + frame.scale * box.heightMm <= sheet.heightMm
  );
};

/** Share of the window that a box may fill when the view goes to it: its neighbours stay in sight. */
const mostOfWindow = 0.6;

/** Keeps the sheet's edge out of the window: a shift between `window - scale x size` and none. */
const clamped = ({ shiftMm, scale, sizeMm }: { shiftMm: number; scale: number; sizeMm: number }): number =>
  Math.min(0, Math.max(sizeMm * (1 - scale), shiftMm));

/**
 * The frame that shows a box with its neighbours: the scale is kept where it is at least `readableScale`, made smaller
 * where the box would not fit, and the box is as near the middle as the sheet's edges allow. A box already in sight at a readable scale moves nothing.
 */
export const frameOn = ({
  box,
  sheet,
  now,
  readableScale,
}: {
  box: BoxMm;
  sheet: SheetSize;
  now: ViewFrame;
  readableScale: number;
}): ViewFrame => {
  if (now.scale >= readableScale && isInside(box, sheet, now)) return now;
  const fitting = mostOfWindow * Math.min(sheet.widthMm / box.widthMm, sheet.heightMm / box.heightMm);
  const scale = Math.max(1, Math.min(Math.max(now.scale, readableScale), fitting));
  return {
    scale,
    shiftXMm: clamped({
      shiftMm: sheet.widthMm / 2 - scale * (box.xMm + box.widthMm / 2),
      scale,
      sizeMm: sheet.widthMm,
    }),
    shiftYMm: clamped({
      shiftMm: sheet.heightMm / 2 - scale * (box.yMm + box.heightMm / 2),
      scale,
      sizeMm: sheet.heightMm,
    }),
  };
};
