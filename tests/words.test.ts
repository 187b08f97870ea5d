import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { spokenIn, type Words } from '../src/web/language/spoken.ts';
import { looseWords } from './loose-words.ts';

const web = resolve(import.meta.dirname, '../src/web');
const files = readdirSync(web, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('words.en.ts'))
  .sort();

test('no word of a language stands in the app outside its language files', () => {
  expect(looseWords(web)).toEqual([]);
});

/** A language nobody speaks: each sentence in marks, its values inside. */
const invented = <Of extends object>(en: Of): Words<Of> =>
  // reason: the shape is kept key by key, which the compiler cannot see
  Object.fromEntries(
    Object.entries(en).map(([key, says]) => {
      if (typeof says === 'string') return [key, `«${says}»`];
      if (typeof says === 'function') return [key, (...given: unknown[]) => `«${says(...given)}»`];
      return [key, Array.isArray(says) ? says.map((one) => `«${one}»`) : invented(says)];
    }),
  ) as unknown as Words<Of>;

/** Every plain sentence of some words, wherever in them it stands. */
const sentencesOf = (words: object): string[] =>
  Object.values(words).flatMap((says) => {
    if (typeof says === 'string') return [says];
    return typeof says === 'function' ? [] : sentencesOf(says);
  });

const countOf = (words: object, kind: 'string' | 'function'): number =>
  Object.values(words).reduce(
    (count, says) => count + (typeof says === kind ? 1 : typeof says === 'object' ? countOf(says, kind) : 0),
    0,
  );

test('the app has language files, each with what picks the language beside it', () => {
  expect(files.length).toBeGreaterThan(25);
  for (const file of files) {
    const picks = join(web, file.replace(/\.en\.ts$/, '.ts'));
    expect(existsSync(picks), picks).toBe(true);
    expect(readFileSync(picks, 'utf8')).toContain('spoken({ en })');
  }
});

test.each(files)('%s can be put into another language, sentence by sentence', async (file) => {
  const { en }: { en: object } = await import(pathToFileURL(join(web, file)).href);
  const words = spokenIn('xx', { en, xx: invented(en) });
  const sentences = sentencesOf(words);
  expect(sentences.length + countOf(words, 'function')).toBeGreaterThan(0);
  expect(sentences.filter((says) => !says.startsWith('«'))).toEqual([]);
  expect(countOf(words, 'function')).toBe(countOf(en, 'function'));
  expect(sentencesOf(en).length).toBe(sentences.length);
});
