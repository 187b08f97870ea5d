import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlaps, textBox } from '../drawing/box.ts';
import { aBinder, aSetBinder, aTable, pageTexts, pageWords } from './a-binder.test-helper.ts';
import type { SetBinder } from './page-shape.ts';
import { paperSizes } from './paper-sizes.ts';
import { setAlone, setBinder } from './set-binder.ts';
import { typeStyles } from './type-styles.ts';

const rows = (count: number): string[][] =>
  Array.from({ length: count }, (_, row) => [`id-${row}`, `words about the radio number ${row}`, 'at the mast base']);

/** What must hold on every page: words inside the edges, none on another, none too small to read. */
const faultsOf = ({ pages }: SetBinder): string[] =>
  pages.flatMap(({ widthMm, heightMm }, page) => {
    const texts = pageTexts({ pages } as SetBinder, page);
    const boxes = texts.map((shape) => ({ box: textBox(shape), shape }));
    return boxes.flatMap(({ box, shape }, at) => [
      ...(box.leftMm < 8 || box.rightMm > widthMm - 8 || box.topMm < 8 || box.bottomMm > heightMm - 5
        ? [`page ${page + 1}: “${shape.text}” runs off the page`]
        : []),
      ...(shape.sizeMm < 8 * (25.4 / 72) - 1e-9 ? [`page ${page + 1}: “${shape.text}” is under 8 points`] : []),
      ...boxes
        .slice(at + 1)
        .filter((other) => overlaps(box, other.box))
        .map((other) => `page ${page + 1}: “${shape.text}” lies on “${other.shape.text}”`),
    ]);
  });

describe('pages of a binder', () => {
  test('the head of a table stands on every page it goes on to', () => {
    const set = aSetBinder(aBinder([{ kind: 'table', table: aTable(rows(120)) }]));
    const pages = set.pages.map((_, page) => pageWords(set, page)).filter((words) => words.includes('id-'));
    expect(pages.length).toBeGreaterThan(2);
    for (const words of pages) expect(words).toContain('head 1');
    for (const words of pages.slice(1)) expect(words).toContain('Table, continued');
    expect(faultsOf(set)).toEqual([]);
  });

  test('no heading stands alone at the foot of a page', () => {
    for (let lines = 1; lines < 60; lines += 1) {
      const set = aSetBinder(
        aBinder([
          { kind: 'points', points: Array.from({ length: lines }, (_, at) => `point ${at}`) },
          { kind: 'heading', text: 'The heading' },
          { kind: 'table', table: aTable(rows(3), { title: '' }) },
        ]),
      );
      const page = set.bookmarks.find(({ title }) => title === 'The heading')?.page ?? 0;
      expect(pageWords(set, page), `${lines} lines`).toContain('id-0');
    }
  });

  test('a table too wide for an upright page is turned, one too wide for any comes in parts with its first column', () => {
    const wide = Array.from({ length: 9 }, (_, at) => `a cell with words ${at}`);
    const turned = aSetBinder(aBinder([{ kind: 'table', table: aTable([wide, wide]) }]));
    expect(turned.pages.some(({ widthMm, heightMm }) => widthMm > heightMm)).toBe(true);
    const wider = ['key-of-row', ...Array.from({ length: 24 }, (_, at) => `indivisible-word-no.-${at}`)];
    const parted = aSetBinder(aBinder([{ kind: 'table', table: aTable([wider, wider]) }]));
    const words = parted.pages.map((_, page) => pageWords(parted, page)).join('\n');
    expect(words).toContain('Table, part 1 of');
    expect(words.match(/key-of-row/g)?.length).toBeGreaterThan(2);
    expect(faultsOf(parted)).toEqual([]);
  });

  test('the contents name the page on which a chapter and a heading stand', () => {
    const set = aSetBinder(
      aBinder([
        { kind: 'table', table: aTable(rows(90)) },
        { kind: 'heading', text: 'At the end' },
      ]),
    );
    const texts = pageTexts(set, 1).map(({ text }) => text);
    for (const title of ['First chapter', 'Table', 'At the end', 'By place']) {
      const sheet = Number(texts[texts.indexOf(title) + 1]);
      expect(pageWords(set, sheet - 1), title).toContain(title);
      expect(set.bookmarks.find((mark) => mark.title === title)?.page).toBe(sheet - 1);
    }
  });

  test('the index finds a device by either name, and a place, with the sheets they are named on', () => {
    const set = aSetBinder(
      aBinder([
        { kind: 'table', table: aTable(rows(120)) },
        { kind: 'words', text: 'The radio, old, goes.' },
      ]),
    );
    const index = pageWords(set, set.pages.length - 1);
    const named = set.pages.flatMap((_, page) => (pageWords(set, page).includes('radio number') ? [page + 1] : []));
    expect(index).toContain('radio, old');
    expect(index).toContain(`First chapter ${named[0]}–${named.at(-1)}`);
    expect(index).toContain('mast base');
  });

  test('every page but the cover says whose it is, of which day, and which sheet of how many', () => {
    const set = aSetBinder(aBinder([{ kind: 'words', text: 'one' }], { revision: '2' }));
    const sheets = set.pages.length;
    for (let page = 1; page < sheets; page += 1)
      expect(pageWords(set, page)).toContain(
        `Tern · as planned · revision 2 · 2026-11-26 · sheet ${page + 1} of ${sheets}`,
      );
  });

  test('what is not printed takes no room, what is to be ticked or written in does', () => {
    const columns = [
      { id: 'a', head: 'shown' },
      { id: 'b', head: 'kept away', printed: false },
      { id: 'c', head: 'nothing in it' },
      { id: 'd', head: 'done', kind: 'tick' },
      { id: 'e', head: 'found', kind: 'blank' },
    ] as const;
    const set = aSetBinder(
      aBinder([{ kind: 'table', table: aTable([['x', 'y', undefined, undefined, undefined]], { columns }) }]),
    );
    const words = pageWords(set, 2);
    for (const head of ['shown', 'done', 'found']) expect(words).toContain(head);
    for (const away of ['kept away', 'nothing in it']) expect(words).not.toContain(away);
  });

  test('setting can be stopped after any chapter', () => {
    const binder = aBinder([]);
    const chapters = [1, 2, 3].map((id) => ({
      id: `${id}`,
      title: `${id}`,
      blocks: [{ kind: 'words', text: 'x' } as const],
    }));
    const setting = setBinder({ ...binder, chapters }, 'a4');
    expect(setting.next().value).toMatchObject({ chapter: '1', done: 1, of: 4 });
    setting.return(aSetBinder(binder));
    expect(setting.next().done).toBe(true);
  });

  test('no words run off a page or lie on others, whatever stands in a table', () => {
    const cell = fc.oneof(
      fc.lorem({ maxCount: 14 }),
      fc.double({ min: 0, max: 9999, noNaN: true }),
      fc.string({ unit: fc.constantFrom('W', 'i', '-', '/', '8'), maxLength: 60 }),
      fc.constant(undefined),
    );
    const kind = fc.constantFrom('words', 'figure', 'label', 'tick', 'blank');
    const table = fc.integer({ min: 1, max: 12 }).chain((width) =>
      fc.record({
        kinds: fc.array(kind, { minLength: width, maxLength: width }),
        rows: fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 12 }),
        paper: fc.constantFrom(...(Object.keys(paperSizes) as (keyof typeof paperSizes)[])),
      }),
    );
    fc.assert(
      fc.property(table, ({ kinds, rows: own, paper }) => {
        const columns = kinds.map((one, at) => ({ id: `${at}`, head: `head ${at}`, kind: one }));
        const set = aSetBinder(aBinder([{ kind: 'table', table: aTable(own, { columns }) }]), paper);
        expect(faultsOf(set)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

test('chapters that are handed over alone have no cover, contents or index, and count their own sheets', () => {
  const set = setAlone(aBinder([{ kind: 'words', text: 'What it costs.' }]), 'a4');
  expect(set.pages).toHaveLength(1);
  expect(set.bookmarks.map(({ title }) => title)).toEqual(['First chapter']);
  expect(pageWords(set, 0)).toContain('sheet 1 of 1');
  expect(faultsOf(set)).toEqual([]);
});

test('no style is smaller than 8 points', () => {
  for (const { sizeMm } of Object.values(typeStyles)) expect(sizeMm / (25.4 / 72)).toBeGreaterThanOrEqual(8 - 1e-9);
});
