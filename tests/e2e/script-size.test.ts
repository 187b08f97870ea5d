import { readdirSync, readFileSync, statSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { scriptsBeforePicture } from './scripts-before-picture.ts';

const built = new URL('../../dist/', import.meta.url);
const assets = new URL('web/assets/', built);

/** Budgets of compressed script, kB, for what comes after the first picture: what people wait for, with a tenth to spare. */
const budgetsKb: Readonly<Record<string, number>> = {
  'binder-worker': 660,
  'quote-worker': 490,
  plan: 490,
  'pdfkit.browser': 230,
  'starting-worker': 195,
  'work-worker': 145,
  'wirings-worker': 110,
  rules: 105,
  'proof-worker': 85,
  edits: 52,
  'fit-step': 44,
  'prove-step': 44,
  'work-step': 42,
};

/** Whatever has no budget of its own. */
const otherKb = 40;
/** All that a browser keeps to work without a net; types and style too. */
const offlineKb = 3_900;
/** The pictures of the guide, which are built in. */
const picturesKb = 2_200;
/** The command line with its threads, as it lies on the disk. */
const commandKb = 4_600;

const gzipKb = (file: URL): number => gzipSync(readFileSync(file)).length / 1000;

/** Compressed size of each script by its name without its hash, kB; those of one name together. */
const sizesKb = (): ReadonlyMap<string, number> => {
  const sizes = new Map<string, number>();
  for (const file of readdirSync(assets)) {
    const name = /^(.*)-[\w-]{8}\.js$/.exec(file)?.[1];
    if (name !== undefined) sizes.set(name, (sizes.get(name) ?? 0) + gzipKb(new URL(file, assets)));
  }
  return sizes;
};

const over = (what: string, kb: number, budgetKb: number): string[] =>
  kb > budgetKb ? [`${what} grew to ${kb.toFixed(1)} kB; its budget is ${budgetKb} kB.`] : [];

test('what a browser must fetch before the first picture is at most 250 kB of compressed script', () => {
  const before = scriptsBeforePicture(assets);
  for (const start of ['index-', 'plan-worker-']) expect(before.some((name) => name.startsWith(start))).toBe(true);
  const kb = before.reduce((sum, name) => sum + gzipKb(new URL(name, assets)), 0);
  expect(over('The script before the first picture', kb, 250)).toEqual([]);
});

test('each later script and worker keeps to its budget', () => {
  const sizes = sizesKb();
  const first = ['index', 'plan-worker'];
  expect(Object.keys(budgetsKb).filter((name) => !sizes.has(name))).toEqual([]);
  expect(
    [...sizes]
      .filter(([name]) => !first.includes(name))
      .flatMap(([name, kb]) => over(`The script ${name}`, kb, budgetsKb[name] ?? otherKb)),
  ).toEqual([]);
});

test('the app as a whole, and the command line, keep to theirs', () => {
  const files = readdirSync(assets);
  const kbOf = (names: readonly string[]): number =>
    names.reduce((sum, name) => sum + gzipKb(new URL(name, assets)), 0);
  const all = kbOf(files.filter((name) => !name.endsWith('.png')));
  expect(over('All that is kept to work offline', all, offlineKb)).toEqual([]);
  const pictures = kbOf(files.filter((name) => name.endsWith('.png')));
  expect(over('The pictures of the guide', pictures, picturesKb)).toEqual([]);
  const command = new URL('cli/', built);
  const scripts = readdirSync(command).filter((name) => name.endsWith('.js'));
  const commandSize = scripts.reduce((sum, name) => sum + statSync(new URL(name, command)).size / 1000, 0);
  expect(over('The command line', commandSize, commandKb)).toEqual([]);
});

test('a script that grew is named', () => {
  expect(over('The script rules', 120.04, 105)).toEqual(['The script rules grew to 120.0 kB; its budget is 105 kB.']);
  expect(over('The script rules', 105, 105)).toEqual([]);
});

test('all that a phone fetches, page, script and style, stays under 30 kB compressed', () => {
  const phone = new URL('phone/', built);
  const files = readdirSync(new URL('assets/', phone)).map((name) => `assets/${name}`);
  expect(files).toHaveLength(2);
  const kb = ['index.html', 'first-theme.js', ...files].reduce((sum, name) => sum + gzipKb(new URL(name, phone)), 0);
  expect(over('The page for phones', kb, 30)).toEqual([]);
});
