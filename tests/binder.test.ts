import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { papersAboard } from '../src/core/facts/papers-aboard.ts';
import { quickPlan } from '../src/core/quick-plan.test-helper.ts';
import { byCodeUnit } from '../src/core/units/by-code-unit.ts';
import { binderPdf } from '../src/node/binder-pdf.ts';
import { binderOf } from '../src/papers/binder/binder.ts';
import { aSetBinder } from '../src/papers/pages/a-binder.test-helper.ts';
import type { SetBinder } from '../src/papers/pages/page-shape.ts';
import { type PaperName, paperSizes } from '../src/papers/pages/paper-sizes.ts';
import { anExample } from './an-example.test-helper.ts';
import {
  fonts,
  greyPicture,
  hasReaders,
  outline,
  pageSizes,
  type ReadPage,
  readPages,
  soundness,
  type Word,
} from './pdf/read-pdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'fairlead-binder-'));
afterAll(() => rmSync(folder, { recursive: true }));

const pointMm = 25.4 / 72;

const setOf = (name: string, paper: PaperName, dateIso?: string): SetBinder => {
  const boat = anExample(name);
  return aSetBinder(
    binderOf({ boat, plan: quickPlan(boat), paper, ...(dateIso === undefined ? {} : { dateIso }) }),
    paper,
  );
};

/** What the papers named for a boat after a refit are called in the binder. */
const called: Readonly<Record<string, string>> = {
  'power one-line': 'Power on one line',
  'data drawing with node names': 'Lines of data',
  'cable list': 'Cable list',
  'plan with routes and hidden joints': 'The boat',
  'breaker table': 'Fuses and breakers',
  'settings sheet': 'Settings by unit',
  'deviation card (both)': 'Deviation cards',
  'test record': 'Test record',
  photos: 'Photos',
  'manuals and templates': 'Manuals and templates',
  spares: 'Spares aboard',
  'change log': 'Change log',
};

const overlapPt = (one: Word, other: Word): number =>
  Math.min(
    Math.min(one.rightPt, other.rightPt) - Math.max(one.leftPt, other.leftPt),
    // the boxes poppler gives reach above and below the letters
    Math.min(one.bottomPt, other.bottomPt) - Math.max(one.topPt, other.topPt) - 3,
  );

/** Words past the edges of their page, and words that lie on one another. */
const faultsOf = (pages: readonly ReadPage[]): string[] =>
  pages.flatMap(({ widthPt, heightPt, words }, page) => {
    const edgePt = 4 / pointMm;
    const sorted = [...words].sort((a, b) => a.topPt - b.topPt);
    return sorted.flatMap((word, at) => {
      const isOff =
        word.leftPt < edgePt ||
        word.topPt < edgePt ||
        word.rightPt > widthPt - edgePt ||
        word.bottomPt > heightPt - edgePt / 2;
      const on: string[] = [];
      for (const other of sorted.slice(at + 1)) {
        if (other.topPt > word.bottomPt) break;
        if (overlapPt(word, other) > 1) on.push(`page ${page + 1}: “${word.text}” lies on “${other.text}”`);
      }
      return [...(isOff ? [`page ${page + 1}: “${word.text}” runs off the page`] : []), ...on];
    });
  });

/** The longest run of dark pixels in a row or a column of a picture. */
const longestRunPx = ({ width, height, pixels }: ReturnType<typeof greyPicture>, way: 'across' | 'down'): number => {
  const [lines, steps] = way === 'across' ? [height, width] : [width, height];
  let longest = 0;
  for (let line = 0; line < lines; line += 1) {
    let run = 0;
    for (let step = 0; step < steps; step += 1) {
      const at = way === 'across' ? line * width + step : step * width + line;
      run = (pixels[at] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  }
  return longest;
};

test('the binder holds every paper that is named for a boat after a refit', () => {
  const set = setOf('gannet', 'a4');
  const titles = set.bookmarks.map(({ title }) => title);
  expect(Object.keys(called)).toEqual(papersAboard.papers);
  for (const [paper, title] of Object.entries(called))
    expect(
      titles.some((own) => own.startsWith(title)),
      paper,
    ).toBe(true);
});

test.each(['gannet', 'sandpiper', 'bonxie'])('no page of %s is empty, and none holds a heading alone', (name) => {
  const { pages, bookmarks } = setOf(name, 'a4');
  for (const [page, { shapes, insets }] of pages.entries()) {
    const headings = bookmarks.filter((mark) => mark.page === page).length;
    // two texts at the foot
    const texts = shapes.filter(({ kind }) => kind === 'text').length - 2;
    expect(insets.length > 0 || texts > headings, `page ${page + 1}`).toBe(true);
  }
});

describe.skipIf(!hasReaders)('readers of PDF (poppler-utils and qpdf of Debian)', () => {
  describe.each([
    ['gannet', 'a4'],
    ['sandpiper', 'letter'],
  ] as const)('find the binder of %s on %s', (name, paper) => {
    const file = join(folder, `${name}.pdf`);
    const set = setOf(name, paper, '2026-11-26');
    let pages: ReadPage[] = [];
    beforeAll(async () => {
      writeFileSync(file, await binderPdf(set));
      pages = readPages(file);
    });

    test('sound, with as many pages as were set, each of the size of the paper', () => {
      expect(soundness(file)).toContain('No syntax or stream encoding errors found');
      expect(soundness(file)).not.toContain('WARNING');
      const { widthMm, heightMm } = paperSizes[paper];
      const sizes = pageSizes(file).map(({ widthPt, heightPt }) => [widthPt, heightPt].map((pt) => pt * pointMm));
      expect(sizes.length).toBe(set.pages.length);
      for (const [width = 0, height = 0] of sizes) {
        expect(Math.min(width, height)).toBeCloseTo(widthMm, 1);
        expect(Math.max(width, height)).toBeCloseTo(heightMm, 1);
      }
    });

    test('with every font embedded, and words that can be copied', () => {
      const own = fonts(file);
      expect(own.map(({ name: font }) => font.replace(/^\w+\+/, '')).sort(byCodeUnit)).toEqual([
        'B612Mono-Regular',
        'SourceSans3-Regular',
        'SourceSans3-SemiBold',
      ]);
      expect(own.every(({ isEmbedded, isSubset, hasUnicode }) => isEmbedded && isSubset && hasUnicode)).toBe(true);
    });

    test('with the bookmarks and the contents leading to where things stand', () => {
      const marks = outline(file);
      expect(marks.map(({ title, page }) => `${title} ${page - 1}`)).toEqual(
        set.bookmarks.map(({ title, page }) => `${title} ${page}`),
      );
      const wholeSheets = new Set(set.pages.flatMap(({ insets }, page) => (insets.length > 0 ? [page] : [])));
      for (const { title, page } of marks) {
        if (wholeSheets.has(page - 1)) continue;
        const words = (pages[page - 1]?.words ?? []).map(({ text }) => text).join(' ');
        expect(words, `sheet ${page}`).toContain(title.split(' ').slice(0, 3).join(' '));
      }
    });

    test('with no word off its page or on another', () => {
      expect(faultsOf(pages)).toEqual([]);
    });

    test('with rulers of 100 mm both ways, within 0.2 mm', () => {
      const dpi = 300;
      const picture = greyPicture(file, 1, dpi);
      // the rule under the name of the boat is longer than the ruler: only the lower half is looked at
      const half = Math.floor(picture.height / 2);
      const lower = {
        ...picture,
        height: picture.height - half,
        pixels: picture.pixels.subarray(half * picture.width),
      };
      for (const way of ['across', 'down'] as const) {
        const lengthMm = (longestRunPx(lower, way) * 25.4) / dpi;
        expect(Math.abs(lengthMm - 100), `${way}: ${lengthMm} mm`).toBeLessThanOrEqual(0.2);
      }
      expect((pages[0]?.words ?? []).map(({ text }) => text).join(' ')).toContain('Print at 100 %');
    });

    test('asking to be printed at its own size', () => {
      expect(readFileSync(file, 'latin1')).toContain('/PrintScaling /None');
    });
  });
});

test('equal boats and days give equal bytes, another day others', async () => {
  const bytes = async (day?: string): Promise<string> =>
    Buffer.from(await binderPdf(setOf('sandpiper', 'letter', day))).toString('latin1');
  const [once, again, later, dayless] = [
    await bytes('2026-11-26'),
    await bytes('2026-11-26'),
    await bytes('2026-11-27'),
    await bytes(),
  ];
  expect(again === once).toBe(true);
  expect(later === once).toBe(false);
  expect(dayless === once).toBe(false);
  expect((await bytes()) === dayless).toBe(true);
});
