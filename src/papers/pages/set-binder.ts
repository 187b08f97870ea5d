import type { Binder } from '../binder/binder-shape.ts';
import { chapterPages } from './chapter-pages.ts';
import { type ContentsLine, contentsPages, footWords } from './contents-pages.ts';
import { coverPage } from './cover-page.ts';
import { indexChapter, type Mention } from './index-pages.ts';
import type { ChapterPages } from './page-flow.ts';
import type { Bookmark, Page, SetBinder } from './page-shape.ts';
import { edgesMm, type PageArea, type PaperName } from './paper-sizes.ts';
import { lineShapes } from './piece.ts';
import { typeStyles } from './type-styles.ts';
import { ruleShape } from './word-pieces.ts';

/** How far the setting of a binder has come: chapters done of all, pages so far. */
export interface SettingProgress {
  readonly chapter: string;
  readonly done: number;
  readonly of: number;
  readonly pages: number;
}

/** One chapter in pages, and the name it has at the foot and in the index. */
interface Part {
  readonly title: string;
  readonly isIndexed: boolean;
  readonly set: ChapterPages;
}

const pagesBefore = (parts: readonly Part[], at: number): number =>
  parts.slice(0, at).reduce((sum, { set }) => sum + set.pages.length, 0);

/** Where every heading stands once `front` pages go before the first chapter. */
const marksOf = (parts: readonly Part[], front: number): Bookmark[] =>
  parts.flatMap(({ set }, at) => {
    const before = front + pagesBefore(parts, at);
    return set.marks.map(({ title, level, page, topMm }) => ({ title, level, page: before + page, topMm }));
  });

const mentionsOf = (parts: readonly Part[], front: number): Mention[] =>
  parts.flatMap(({ title, isIndexed, set }, at) => {
    if (!isIndexed) return [];
    const before = front + pagesBefore(parts, at);
    return set.mentions.map(({ page, says, about }) => ({ page: before + page, chapter: title, says, about }));
  });

interface FootOf {
  readonly title: string;
  readonly area: PageArea;
  readonly isWhole: boolean;
  readonly sheet: number;
  readonly sheets: number;
}

/** From the lower edge of a framed sheet to the top of the line in its border. */
const footBorderMm = 8.4;

const footShapes = (binder: Binder, { title, area, isWhole, sheet, sheets }: FootOf): Page['shapes'] => {
  const topMm = isWhole ? area.heightMm - footBorderMm : area.bottomMm + 4.2;
  const leftMm = isWhole ? edgesMm.hole : area.leftMm;
  return [
    ...(isWhole ? [] : [ruleShape(area.leftMm, topMm - 1.4, area.rightMm - area.leftMm, 0.12)]),
    ...lineShapes([footWords(binder, { sheet, sheets })], typeStyles.foot, { leftMm, topMm }),
    ...lineShapes([title], typeStyles.foot, { leftMm: area.leftMm, topMm, rightMm: area.rightMm }),
  ];
};

const finished = (
  binder: Binder,
  parts: readonly Part[],
  { before, sheets }: { before: number; sheets: number },
): Page[] => {
  let sheet = before;
  return parts.flatMap(({ title, set }) =>
    set.pages.map(({ area, isWhole, shapes, insets, links }) => {
      sheet += 1;
      return {
        widthMm: area.widthMm,
        heightMm: area.heightMm,
        shapes: [...shapes, ...footShapes(binder, { title, area, isWhole, sheet, sheets })],
        insets,
        links,
      };
    }),
  );
};

const contentsLines = (bookmarks: readonly Bookmark[]): ContentsLine[] =>
  bookmarks.map(({ title, level, page }) => ({ title, level, page }));

/** How many pages the contents take does not hang on the numbers in them, so they are set once to count and once to print. */
const contentsOf = (parts: readonly Part[], indexLines: readonly string[], paper: PaperName): number =>
  contentsPages(
    [
      ...contentsLines(marksOf(parts, 0)),
      ...indexLines.map((title, at) => ({ title, level: at === 0 ? (0 as const) : (1 as const), page: 0 })),
    ],
    paper,
  ).pages.length;

const indexHeadings = ['Index', 'By device', 'By place'] as const;

/**
 * Sets a binder in pages, chapter by chapter; after each it says how far it has come, and whoever asked may stop asking. Cover,
 * contents and index are made here: they need the numbers of the pages.
 */
export function* setBinder(binder: Binder, paper: PaperName): Generator<SettingProgress, SetBinder> {
  const parts: Part[] = [];
  const of = binder.chapters.length + 1;
  let pages = 1;
  for (const chapter of binder.chapters) {
    const set = chapterPages(chapter, paper);
    parts.push({ title: chapter.title, isIndexed: chapter.isIndexed !== false, set });
    pages += set.pages.length;
    yield { chapter: chapter.title, done: parts.length, of, pages };
  }
  const front = 1 + contentsOf(parts, indexHeadings, paper);
  const index = indexChapter(binder, mentionsOf(parts, front));
  const all = [...parts, { title: index.title, isIndexed: false, set: chapterPages(index, paper) }];
  const bookmarks = marksOf(all, front);
  const contents = { title: 'Contents', isIndexed: false, set: contentsPages(contentsLines(bookmarks), paper) };
  const inOrder = [contents, ...all];
  const sheets = 1 + pagesBefore(inOrder, inOrder.length);
  yield { chapter: index.title, done: of, of, pages: sheets };
  return {
    title: `${binder.boat}: papers of her navigation electronics, ${binder.standing}`,
    ...(binder.dateIso === undefined ? {} : { dateIso: binder.dateIso }),
    pages: [coverPage(binder, paper), ...finished(binder, inOrder, { before: 1, sheets })],
    bookmarks: [{ title: 'Contents', level: 0, page: 1, topMm: 0 }, ...bookmarks],
  };
}

/** Papers that are handed over by themselves; “as planned” unless told. */
export type LoosePapers = Pick<Binder, 'boat' | 'chapters'> & Partial<Binder>;

/** Sets chapters that are handed over by themselves, such as a quote: no cover, no contents and no index. */
export const setAlone = (loose: LoosePapers, paper: PaperName): SetBinder => {
  const binder: Binder = { standing: 'as planned', cover: [], devices: [], places: [], ...loose };
  const parts = binder.chapters.map((chapter) => ({
    title: chapter.title,
    isIndexed: false,
    set: chapterPages(chapter, paper),
  }));
  const sheets = pagesBefore(parts, parts.length);
  return {
    title: [binder.boat, ...binder.chapters.map(({ title }) => title)].join(': '),
    ...(binder.dateIso === undefined ? {} : { dateIso: binder.dateIso }),
    pages: finished(binder, parts, { before: 0, sheets }),
    bookmarks: marksOf(parts, 0),
  };
};
