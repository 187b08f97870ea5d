import { type SheetName, sheetSizes } from '../../core/facts/sheet-sizes.ts';

const upright = ({ words, widthMm, heightMm }: (typeof sheetSizes)[SheetName]) => ({
  widthMm: heightMm,
  heightMm: widthMm,
  name: words,
});

/** Sheets a binder is printed on, upright, millimetres. */
export const paperSizes = {
  a4: upright(sheetSizes.a4),
  letter: upright(sheetSizes.letter),
} as const;

export type PaperName = keyof typeof paperSizes;

/** Room at the edges, millimetres; `hole` is kept free along the long edge that is punched. */
export const edgesMm = { hole: 20, side: 12, top: 13, foot: 15 } as const;

/** A page with what may be set on it. */
export interface PageArea {
  readonly isTurned: boolean;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
}

/** A page of a paper, upright or turned to its longer side: then the holes are above. */
export const pageArea = (paper: PaperName, isTurned: boolean): PageArea => {
  const { widthMm: shortMm, heightMm: longMm } = paperSizes[paper];
  const [widthMm, heightMm] = isTurned ? [longMm, shortMm] : [shortMm, longMm];
  return {
    isTurned,
    widthMm,
    heightMm,
    leftMm: isTurned ? edgesMm.side : edgesMm.hole,
    topMm: isTurned ? edgesMm.hole : edgesMm.top,
    rightMm: widthMm - edgesMm.side,
    bottomMm: heightMm - edgesMm.foot,
  };
};

/** How wide and high what is set on a page may be. */
export const roomOf = ({ leftMm, rightMm, topMm, bottomMm }: PageArea): { widthMm: number; heightMm: number } => ({
  widthMm: rightMm - leftMm,
  heightMm: bottomMm - topMm,
});
