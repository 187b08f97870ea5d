import type { ViewFrame } from './view-frame.ts';

/** How the whole sheet lies in its window, in pixels of it: where its upper left is, and how large a millimetre is. */
export interface SheetLie {
  readonly pxPerMm: number;
  readonly leftPx: number;
  readonly topPx: number;
}

/** A move of a picture: a point p of it, in pixels of the window, comes to scale x p + shift. */
export interface PictureMove {
  readonly scale: number;
  readonly shiftXPx: number;
  readonly shiftYPx: number;
}

/**
 * A frame of the sheet as a move of the sheet that is seen whole.
 *
 * @example moveOfFrame({ scale: 2, shiftXMm: -10, shiftYMm: 0 }, { pxPerMm: 4, leftPx: 100, topPx: 0 })
 * // { scale: 2, shiftXPx: -140, shiftYPx: 0 }
 */
export const moveOfFrame = ({ scale, shiftXMm, shiftYMm }: ViewFrame, lie: SheetLie): PictureMove => ({
  scale,
  shiftXPx: lie.pxPerMm * shiftXMm + (1 - scale) * lie.leftPx,
  shiftYPx: lie.pxPerMm * shiftYMm + (1 - scale) * lie.topPx,
});

/** The frame of the sheet that a move of the whole sheet comes to. */
export const frameOfMove = ({ scale, shiftXPx, shiftYPx }: PictureMove, lie: SheetLie): ViewFrame => ({
  scale,
  shiftXMm: (shiftXPx - (1 - scale) * lie.leftPx) / lie.pxPerMm,
  shiftYMm: (shiftYPx - (1 - scale) * lie.topPx) / lie.pxPerMm,
});

/** What moves a picture that was drawn in one frame to where it would be drawn in another. */
export const moveBetween = (from: PictureMove, to: PictureMove): PictureMove => {
  const scale = to.scale / from.scale;
  return {
    scale,
    shiftXPx: to.shiftXPx - scale * from.shiftXPx,
    shiftYPx: to.shiftYPx - scale * from.shiftYPx,
  };
};
