import type { Shape } from '../drawing/shapes.ts';
import type { Inset, Page } from './page-shape.ts';
import { type PageArea, type PaperName, pageArea } from './paper-sizes.ts';
import type { Piece } from './piece.ts';

/** A page being filled. */
interface OpenPage {
  readonly area: PageArea;
  readonly shapes: Shape[];
  readonly insets: Inset[];
  readonly links: Page['links'][number][];
  yMm: number;
  isFresh: boolean;
  /** taken up to its edges by a sheet with a frame of its own: the foot then stands in the border */
  isWhole: boolean;
}

/** Where a heading came to stand, counted in pages of the chapter. */
interface ChapterMark {
  readonly title: string;
  readonly level: 0 | 1;
  readonly page: number;
  readonly topMm: number;
}

/** What stands on which page of a chapter, for the index. */
interface ChapterMention {
  readonly page: number;
  readonly says: readonly string[];
  readonly about: readonly string[];
}

/** A chapter in pages, before it is known where in the binder they stand. */
export interface ChapterPages {
  readonly pages: readonly OpenPage[];
  readonly marks: readonly ChapterMark[];
  readonly mentions: readonly ChapterMention[];
}

export interface PageFlow extends ChapterPages {
  /** the page being filled */
  readonly page: () => OpenPage;
  /** room left on it */
  readonly leftMm: () => number;
  /** a new page; none where the page is empty and stands right already */
  readonly turnTo: (isTurned: boolean, isNew?: boolean) => OpenPage;
  readonly place: (pieces: readonly Piece[]) => void;
}

const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { heightMm, gapMm }, at) => sum + heightMm + (at === 0 ? 0 : gapMm), 0);

/** Pieces that stand on one page: each with what it is chained to. */
const chains = (pieces: readonly Piece[]): Piece[][] => {
  const all: Piece[][] = [];
  let isOpen = false;
  for (const piece of pieces) {
    if (isOpen) all.at(-1)?.push(piece);
    else all.push([piece]);
    isOpen = piece.isChained === true;
  }
  return all;
};

/** Fills pages of a paper with pieces from top to bottom; what is chained is kept together, heads are set again. */
export const startFlow = (paper: PaperName, isTurned: boolean): PageFlow => {
  const pages: OpenPage[] = [];
  const marks: ChapterMark[] = [];
  const mentions: ChapterMention[] = [];
  const fresh = (turned: boolean): OpenPage => {
    const area = pageArea(paper, turned);
    return { area, shapes: [], insets: [], links: [], yMm: area.topMm, isFresh: true, isWhole: false };
  };
  let open = fresh(isTurned);
  pages.push(open);
  const turnTo = (turned: boolean, isNew = false): OpenPage => {
    if (open.isFresh) pages.pop();
    else if (!isNew && open.area.isTurned === turned) return open;
    open = fresh(turned);
    pages.push(open);
    return open;
  };
  const set = (piece: Piece): void => {
    const topMm = open.yMm + (open.isFresh ? 0 : piece.gapMm);
    open.shapes.push(...piece.shapes({ leftMm: open.area.leftMm, topMm }));
    open.yMm = topMm + piece.heightMm;
    open.isFresh = false;
    const page = pages.length - 1;
    if (piece.bookmark !== undefined) marks.push({ ...piece.bookmark, page, topMm });
    if (piece.says.length > 0 || piece.about !== undefined)
      mentions.push({ page, says: piece.says, about: piece.about ?? [] });
  };
  const pageMm = (): number => open.area.bottomMm - open.area.topMm;
  const place = (pieces: readonly Piece[]): void => {
    // what is chained and higher than a page is set piece by piece
    for (const chain of chains(pieces).flatMap((one) =>
      heightOf(one) > pageMm() ? one.map((piece) => [piece]) : [one],
    )) {
      const gapMm = open.isFresh ? 0 : (chain[0]?.gapMm ?? 0);
      const isOver = open.yMm + gapMm + heightOf(chain) > open.area.bottomMm + 1e-6;
      if (isOver && !open.isFresh) {
        turnTo(open.area.isTurned, true);
        for (const again of chain[0]?.repeats ?? []) set(again);
      }
      for (const piece of chain) set(piece);
    }
  };
  return { pages, marks, mentions, page: () => open, leftMm: () => open.area.bottomMm - open.yMm, turnTo, place };
};
