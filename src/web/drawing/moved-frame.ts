import type { SheetSize, ViewFrame } from './view-frame.ts';

export const largestScale = 16;

/** How far past the sheet's edge one may pull it, as a share of its size. */
export const slack = 0.25;

interface Axis {
  readonly scale: number;
  readonly shiftMm: number;
  readonly sheetMm: number;
}

/** The shift nearest to the one asked for at which no more than the slack beside the sheet comes into sight. */
const heldShift = ({ scale, shiftMm, sheetMm }: Axis): number =>
  Math.min(scale * slack * sheetMm, Math.max((1 - scale * (1 + slack)) * sheetMm, shiftMm));

const held = ({ scale, shiftXMm, shiftYMm }: ViewFrame, { widthMm, heightMm }: SheetSize): ViewFrame => ({
  scale,
  shiftXMm: heldShift({ scale, shiftMm: shiftXMm, sheetMm: widthMm }),
  shiftYMm: heldShift({ scale, shiftMm: shiftYMm, sheetMm: heightMm }),
});

/** The frame after a step of the drawing, held near the sheet. */
export const steppedFrame = (
  { scale, shiftXMm, shiftYMm }: ViewFrame,
  step: { readonly xMm: number; readonly yMm: number },
  sheet: SheetSize,
): ViewFrame => held({ scale, shiftXMm: shiftXMm + step.xMm, shiftYMm: shiftYMm + step.yMm }, sheet);

/**
 * The frame after the drawing has grown by a factor with one point of its window standing still, unless the sheet would
 * go too far. The scale stays between that of the whole sheet and the largest.
 *
 * @example scaledFrame({ scale: 1, shiftXMm: 0, shiftYMm: 0 }, { factor: 2, still: [100, 50] }, sheet)
 * // { scale: 2, shiftXMm: -100, shiftYMm: -50 }
 */
export const scaledFrame = (
  { scale: before, shiftXMm, shiftYMm }: ViewFrame,
  { factor, still: [xMm, yMm] }: { readonly factor: number; readonly still: readonly [xMm: number, yMm: number] },
  sheet: SheetSize,
): ViewFrame => {
  const scale = Math.min(largestScale, Math.max(1, before * factor));
  const grown = scale / before;
  return held({ scale, shiftXMm: xMm - grown * (xMm - shiftXMm), shiftYMm: yMm - grown * (yMm - shiftYMm) }, sheet);
};
