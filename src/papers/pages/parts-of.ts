import type { Bookmark, Page, SetBinder } from './page-shape.ts';

/** One chapter of a binder that is set, by its pages counted from 0; it can be read and printed alone. */
export interface BinderPart {
  readonly title: string;
  readonly first: number;
  readonly last: number;
}

/**
 * The chapters of a binder that is set, contents and index among them; the cover belongs to none.
 *
 * @example partsOf(set)[0] // { title: 'Contents', first: 1, last: 2 }
 */
export const partsOf = ({ pages, bookmarks }: Pick<SetBinder, 'pages' | 'bookmarks'>): readonly BinderPart[] => {
  const chapters = bookmarks.filter(({ level }) => level === 0);
  return chapters.map(({ title, page }, at) => ({
    title,
    first: page,
    last: (chapters[at + 1]?.page ?? pages.length) - 1,
  }));
};

const isWithin = ({ first, last }: BinderPart, page: number): boolean => first <= page && page <= last;

/** A page without the links that would lead out of its part. */
const linkedWithin = (page: Page, part: BinderPart): Page => ({
  ...page,
  links: page.links
    .filter(({ toPage }) => isWithin(part, toPage))
    .map((link) => ({ ...link, toPage: link.toPage - part.first })),
});

const marksWithin = (bookmarks: readonly Bookmark[], part: BinderPart): Bookmark[] =>
  bookmarks.filter(({ page }) => isWithin(part, page)).map((mark) => ({ ...mark, page: mark.page - part.first }));

/** One part of a binder as a set of its own. Its pages keep the numbers they have in the binder, so that they can be put back. */
export const partOfBinder = (set: SetBinder, part: BinderPart): SetBinder => ({
  ...set,
  title: `${set.title}: ${part.title}`,
  pages: set.pages.slice(part.first, part.last + 1).map((page) => linkedWithin(page, part)),
  bookmarks: marksWithin(set.bookmarks, part),
});
