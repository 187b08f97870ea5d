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

/**
 * The sheet, and the window one sees it through when the whole sheet fits: in millimetres of the sheet, so the window
 * reaches past the sheet on two sides unless both have one shape.
 */
export interface Sight {
  readonly sheet: SheetSize;
  readonly window: BoxMm;
}

/** The window round a sheet that fits it, whatever the unit of the window's own size; one of no size, as while it is hidden, is taken to be the sheet's. */
export const sightOf = ({ sheet, window }: { sheet: SheetSize; window: { width: number; height: number } }): Sight => {
  const perMm = Math.min(window.width / sheet.widthMm, window.height / sheet.heightMm);
  if (perMm === 0) return { sheet, window: { xMm: 0, yMm: 0, ...sheet } };
  const widthMm = window.width / perMm;
  const heightMm = window.height / perMm;
  return {
    sheet,
    window: { xMm: (sheet.widthMm - widthMm) / 2, yMm: (sheet.heightMm - heightMm) / 2, widthMm, heightMm },
  };
};

/** The smallest box round all; undefined for none. */
export const boxRound = (boxes: readonly BoxMm[]): BoxMm | undefined => {
  if (boxes.length === 0) return undefined;
  const left = Math.min(...boxes.map((box) => box.xMm));
  const top = Math.min(...boxes.map((box) => box.yMm));
  const right = Math.max(...boxes.map((box) => box.xMm + box.widthMm));
  const bottom = Math.max(...boxes.map((box) => box.yMm + box.heightMm));
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top };
};

/** The whole sheet, in the middle of the window. */
export const wholeFrame: ViewFrame = { scale: 1, shiftXMm: 0, shiftYMm: 0 };

interface Axis {
  readonly scale: number;
  readonly centreMm: number;
  readonly sheetMm: number;
  readonly fromMm: number;
  readonly lengthMm: number;
}

/** Brings a point of one axis to the middle of the window, as near as the sheet's edges allow. */
const shiftTo = ({ scale, centreMm, sheetMm, fromMm, lengthMm }: Axis): number => {
  const roomMm = lengthMm - scale * sheetMm;
  if (roomMm >= 0) return fromMm + roomMm / 2;
  return Math.min(fromMm, Math.max(fromMm + roomMm, fromMm + lengthMm / 2 - scale * centreMm));
};

const frameRound = (box: BoxMm, { sheet, window }: Sight, scale: number): ViewFrame => ({
  scale,
  shiftXMm: shiftTo({
    scale,
    centreMm: box.xMm + box.widthMm / 2,
    sheetMm: sheet.widthMm,
    fromMm: window.xMm,
    lengthMm: window.widthMm,
  }),
  shiftYMm: shiftTo({
    scale,
    centreMm: box.yMm + box.heightMm / 2,
    sheetMm: sheet.heightMm,
    fromMm: window.yMm,
    lengthMm: window.heightMm,
  }),
});

/** A sheet that would have to shrink by more than this to be seen whole is first shown in part, as large as it was drawn. */
const mostShrink = 1.25;

/** How a sheet lies when it is opened: whole, or from its upper left at the scale at which its words were meant to be read. */
export const firstFrame = (sight: Sight, drawnScale: number): ViewFrame =>
  drawnScale <= mostShrink ? wholeFrame : frameRound({ xMm: 0, yMm: 0, widthMm: 0, heightMm: 0 }, sight, drawnScale);

/** What of the drawing is seen through the window, on the sheet. */
export const seenBox = ({ sheet, window }: Sight, { scale, shiftXMm, shiftYMm }: ViewFrame): BoxMm => {
  const left = Math.max(0, (window.xMm - shiftXMm) / scale);
  const top = Math.max(0, (window.yMm - shiftYMm) / scale);
  const right = Math.min(sheet.widthMm, (window.xMm + window.widthMm - shiftXMm) / scale);
  const bottom = Math.min(sheet.heightMm, (window.yMm + window.heightMm - shiftYMm) / scale);
  return { xMm: left, yMm: top, widthMm: Math.max(0, right - left), heightMm: Math.max(0, bottom - top) };
};

export const middleOf = ({ xMm, yMm, widthMm, heightMm }: BoxMm): readonly [xMm: number, yMm: number] => [
  xMm + widthMm / 2,
  yMm + heightMm / 2,
];

/** The frame of the same scale with a point of the drawing in the middle of the window, as near as the edges allow. */
export const frameAt = (point: { xMm: number; yMm: number }, sight: Sight, now: ViewFrame): ViewFrame =>
  frameRound({ ...point, widthMm: 0, heightMm: 0 }, sight, now.scale);

const isInside = (box: BoxMm, { window }: Sight, { scale, shiftXMm, shiftYMm }: ViewFrame): boolean => {
  const left = scale * box.xMm + shiftXMm - window.xMm;
  const top = scale * box.yMm + shiftYMm - window.yMm;
  return (
    left >= 0 &&
    top >= 0 &&
    left + scale * box.widthMm <= window.widthMm &&
    top + scale * box.heightMm <= window.heightMm
  );
};

/** Share of the window that what is shown may fill: its neighbours stay in sight. */
const mostOfWindow = 0.6;

const fittingScale = (box: BoxMm, { window }: Sight): number =>
  mostOfWindow * Math.min(window.widthMm / box.widthMm, window.heightMm / box.heightMm);

/**
 * The frame that shows some boxes with their neighbours: all of them where they fit at a readable scale, else the first.
 * The scale is kept where it is readable; what is already in sight at a readable scale moves nothing.
 */
export const frameOn = ({
  boxes,
  sight,
  now,
  readableScale,
}: {
  boxes: readonly [BoxMm, ...BoxMm[]];
  sight: Sight;
  now: ViewFrame;
  readableScale: number;
}): ViewFrame => {
  const all = boxRound(boxes) ?? boxes[0];
  const box = fittingScale(all, sight) >= readableScale ? all : boxes[0];
  if (now.scale >= readableScale && isInside(box, sight, now)) return now;
  const scale = Math.max(1, Math.min(Math.max(now.scale, readableScale), fittingScale(box, sight)));
  return frameRound(box, sight, scale);
};
