/** Sheets a binder is printed on. A4 by ISO 216, Letter by ANSI/ASME Y14.1; millimetres, upright. */
export const paperSizes = {
  a4: { widthMm: 210, heightMm: 297, name: 'A4' },
  letter: { widthMm: 215.9, heightMm: 279.4, name: 'US Letter' },
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
