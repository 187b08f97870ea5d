import type { Sheet } from '../../boat/sheet.ts';
import { firstSheets } from './first-sheets.ts';
import { typicalSheets } from './index.ts';
import { plainWords } from './plain-words.ts';

/** A sheet found, with how well it fits: more is better. */
export interface FoundSheet {
  readonly sheet: Sheet;
  readonly score: number;
}

/**
 * Worth of a hit: a whole word, the beginning of one, a part of one; doubled where it is said in plain words. What most
 * boats get is worth more, what nobody buys any more is worth less unless it is asked for.
 */
const worth = { whole: 6, beginning: 3, part: 1, plainly: 2, phrase: 12, usual: 20, old: -20 } as const;

/** Words too small to tell one unit from another. */
const small: ReadonlySet<string> = new Set(
  'a an and at for from in is it my no of on one or our that the thing to typical we with'.split(' '),
);

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '' && !small.has(word));

/** "Screens" is looked for as "screen". */
const singular = (word: string): string => (word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word);

const hit = (asked: string, words: readonly string[]): number => {
  if (words.some((word) => singular(word) === asked)) return worth.whole;
  if (asked.length > 1 && words.some((word) => word.startsWith(asked))) return worth.beginning;
  return asked.length > 2 && words.some((word) => word.includes(asked)) ? worth.part : 0;
};

interface Entry {
  readonly sheet: Sheet;
  readonly named: readonly string[];
  readonly plain: readonly string[];
  readonly phrases: readonly string[];
  readonly isUsual: boolean;
  readonly isOld: boolean;
}

const usual: ReadonlySet<string> = new Set(firstSheets);

const entryOf = (sheet: Sheet, phrases: readonly string[]): Entry => ({
  sheet,
  named: wordsOf(`${sheet.id} ${sheet.name} ${sheet.kind}`),
  plain: phrases.flatMap(wordsOf),
  phrases,
  isUsual: usual.has(sheet.id),
  isOld: /^old\b/i.test(sheet.name),
});

const entries: readonly Entry[] = typicalSheets.map((sheet) => entryOf(sheet, plainWords[sheet.id] ?? []));

/** A sheet of somebody's own answers to the plain words of its kind. */
const ownEntry = (sheet: Sheet): Entry =>
  entryOf(
    sheet,
    entries.flatMap((entry) => (entry.sheet.kind === sheet.kind ? entry.phrases : [])),
  );

const scoreOf = ({ named, plain, phrases, isUsual, isOld }: Entry, asked: readonly string[], text: string): number => {
  const hits = asked.map((word) => Math.max(hit(word, named), worth.plainly * hit(word, plain)));
  // Every word asked for must be found: "old radar" is no new radar.
  if (hits.includes(0)) return 0;
  const isPhrase = phrases.some((phrase) => phrase === text.trim().toLowerCase());
  const favour = isUsual ? worth.usual : isOld && !asked.includes('old') ? worth.old : 0;
  const sum = hits.reduce((all, one) => all + one, isPhrase ? worth.phrase : 0);
  return Math.max(1, sum + favour);
};

const found = (all: readonly Entry[], asked: readonly string[], text: string): FoundSheet[] =>
  all
    .map((entry) => ({ sheet: entry.sheet, score: scoreOf(entry, asked, text) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);

/**
 * Sheets for what somebody calls a unit, the best first, what most boats get before the rest; equal ones in the order of the library. Every word must be found
 * in a sheet, in its own words or in plain ones; small words and a plural s do not count. Empty text gives none.
 *
 * `own`: sheets of somebody's own, which come before the typical ones.
 *
 * @example findSheets('thing that hears ships') // the AIS sheets
 */
export const findSheets = (text: string, own: readonly Sheet[] = []): readonly FoundSheet[] => {
  const asked = wordsOf(text).map(singular);
  if (asked.length === 0) return [];
  return [...found(own.map(ownEntry), asked, text), ...found(entries, asked, text)];
};
