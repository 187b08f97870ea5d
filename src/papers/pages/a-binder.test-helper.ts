import type { Binder, Block } from '../binder/binder-shape.ts';
import { textsOf } from '../drawing/box.ts';
import type { TextShape } from '../drawing/shapes.ts';
import type { ListTable } from '../table/list-table.ts';
import type { SetBinder } from './page-shape.ts';
import type { PaperName } from './paper-sizes.ts';
import { setBinder } from './set-binder.ts';

/** A binder of one chapter with the given blocks. */
export const aBinder = (blocks: readonly Block[], over: Partial<Binder> = {}): Binder => ({
  boat: 'Tern',
  standing: 'as planned',
  dateIso: '2026-11-26',
  cover: ['8.6 m sloop'],
  devices: [{ id: 'radio', name: 'radio, old', brief: 'radio' }],
  places: [{ id: 'mast-base', name: 'mast base', brief: 'mast base' }],
  chapters: [{ id: 'one', title: 'First chapter', blocks }],
  ...over,
});

/** A table of so many rows of the given cells. */
export const aTable = (rows: ListTable['rows'], over: Partial<ListTable> = {}): ListTable => ({
  id: 'table',
  title: 'Table',
  columns: (rows[0] ?? []).map((_, at) => ({ id: `c${at}`, head: `head ${at}` })),
  rows,
  empty: 'None.',
  ...over,
});

/** A binder set to its end. */
export const aSetBinder = (binder: Binder, paper: PaperName = 'a4'): SetBinder => {
  const setting = setBinder(binder, paper);
  let step = setting.next();
  while (step.done !== true) step = setting.next();
  return step.value;
};

/** All texts of a page in the order in which they were set. */
export const pageTexts = ({ pages }: SetBinder, page: number): TextShape[] => textsOf(pages[page]?.shapes ?? []);

/** All words of a page. */
export const pageWords = (set: SetBinder, page: number): string =>
  pageTexts(set, page)
    .map(({ text }) => text)
    .join('\n');
