import { expect, test } from 'vitest';
import type { Page, SetBinder } from './page-shape.ts';
import { partOfBinder, partsOf } from './parts-of.ts';

const page = (...toPages: number[]): Page => ({
  widthMm: 210,
  heightMm: 297,
  shapes: [],
  insets: [],
  links: toPages.map((toPage) => ({ leftMm: 0, topMm: 0, widthMm: 9, heightMm: 9, toPage })),
});

/** A cover, contents, two chapters of two pages and of one, an index. */
const set: SetBinder = {
  title: 'Papers',
  pages: [page(), page(2, 4, 5), page(3, 4), page(), page(), page(2)],
  bookmarks: [
    { title: 'Contents', level: 0, page: 1, topMm: 0 },
    { title: 'Cables', level: 0, page: 2, topMm: 0 },
    { title: 'Drops', level: 1, page: 3, topMm: 40 },
    { title: 'Kit', level: 0, page: 4, topMm: 0 },
    { title: 'Index', level: 0, page: 5, topMm: 0 },
  ],
};

test('the parts of a binder are its chapters, which together are all pages but the cover', () => {
  const parts = partsOf(set);
  expect(parts.map(({ title, first, last }) => [title, first, last])).toEqual([
    ['Contents', 1, 1],
    ['Cables', 2, 3],
    ['Kit', 4, 4],
    ['Index', 5, 5],
  ]);
  expect(parts.flatMap((part) => partOfBinder(set, part).pages)).toHaveLength(set.pages.length - 1);
});

test('a part alone counts its pages from its own first and leads nowhere outside', () => {
  const [, cables] = partsOf(set);
  if (cables === undefined) throw new Error('no cables');
  const alone = partOfBinder(set, cables);
  expect(alone.title).toBe('Papers: Cables');
  expect(alone.pages.map(({ links }) => links.map(({ toPage }) => toPage))).toEqual([[1], []]);
  expect(alone.bookmarks.map(({ title, page: at }) => [title, at])).toEqual([
    ['Cables', 0],
    ['Drops', 1],
  ]);
});
