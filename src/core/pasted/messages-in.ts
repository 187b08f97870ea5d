import { pgnInfo } from '../facts/pgns.ts';
import { sentenceInfo } from '../facts/sentences.ts';
import type { PastedMessage } from './pasted-shape.ts';

/** What stands in one line: messages, and what looked like one and is none. */
export interface MessagesInLine {
  readonly found: readonly PastedMessage[];
  readonly whyNot: readonly string[];
}

/** Numbers of messages end here. */
const lastPgn = 131_071;
/** A range longer than this is not spelled out. */
const longestRange = 32;

const decimal = String.raw`\d{5,6}|\d{2,3},\d{3}`;
const hexadecimal = '0x[0-9a-f]{4,6}|[0-9a-f]{4,5}h';
const number = String.raw`(?<![\w.,$])(${hexadecimal}|${decimal})(?![\w]|[.,]\d)`;
const numbers = new RegExp(
  `${number}(?:\\s*(?:-|–|—|to|\\.\\.\\.?|…)\\s*(${hexadecimal}|${decimal})(?![\\w]|[.,]\\d))?`,
  'gi',
);
const afterStroke = /\d{5,6}(?:\/\d{1,4})+(?!\d)/g;
/** A short number is taken only where "PGN" stands before it. */
const namedPgn = /\bpgn\s*[:#]?\s*(\d{1,4})(?![\w,.]|\d)/gi;

const numberOf = (text: string): number => {
  if (/^0x/i.test(text)) return Number.parseInt(text.slice(2), 16);
  return /h$/i.test(text) ? Number.parseInt(text.slice(0, -1), 16) : Number(text.replace(',', ''));
};

/** A number stands for a message where the tables know it, or where it is said to be one. */
const isPgn = (value: number, text: string, isSaid: boolean): boolean =>
  value > 0 && value <= lastPgn && (pgnInfo(value) !== undefined || (isSaid && !text.includes(',')));

/** Whether a number stands where the number of a message would: right after "PGN", or first in the row of such a table. */
const isSaidAt = (line: string, index: number, isListOfPgns: boolean): boolean => {
  const before = line.slice(0, index);
  return /\bpgns?\s*[:#]?\s*$/i.test(before) || (isListOfPgns && before.trim() === '');
};

/** Numbers below this are seldom meant for a message, and nobody is told of them. */
const leastNoted = 59_392;

const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

const sameWords = (line: string, name: string): boolean => ` ${plainName(line)} `.includes(` ${plainName(name)} `);

/** The words beside a number may name another message: a digit may have been misread. */
const doubtOf = (line: string, value: number, named: ReadonlyMap<string, number>): string | undefined => {
  const own = pgnInfo(value)?.name;
  if (own === undefined) return `PGN ${value} is in no table: it is taken as it stands and gives no reading.`;
  if (sameWords(line, own)) return undefined;
  const other = [...named].find(([name, pgn]) => pgn !== value && sameWords(line, name));
  return other === undefined
    ? undefined
    : `The words name PGN ${other[1]} (${pgnInfo(other[1])?.name}); PGN ${value} is ${own}.`;
};

const noMessage = (text: string): string =>
  `${text} is no message in the tables. With "PGN" before it, it is taken as it stands.`;

const rangeOf = (from: string, to: string): { values: readonly number[]; whyNot?: string } => {
  const [first, last] = [numberOf(from), numberOf(to)];
  if (last <= first || Math.max(first, last) < leastNoted) return { values: [first, last] };
  if (last - first >= longestRange)
    return {
      values: [],
      whyNot: `${from} to ${to} is a range of ${last - first + 1} numbers. Name those that are meant.`,
    };
  return { values: Array.from({ length: last - first + 1 }, (_, at) => first + at) };
};

/** The messages of the bus in a line. */
export const pgnsIn = (line: string, named: ReadonlyMap<string, number>, isListOfPgns: boolean): MessagesInLine => {
  const found = new Map<number, PastedMessage>();
  const whyNot: string[] = [];
  const take = (value: number, from: string): void => {
    const doubt = doubtOf(line, value, named);
    found.set(value, { pgn: value, from, ...(doubt === undefined ? {} : { doubt }) });
  };
  for (const { 0: whole, 1: first = '', 2: last, index } of line.matchAll(numbers)) {
    const isSaid = isSaidAt(line, index, isListOfPgns);
    if (last === undefined) {
      const value = numberOf(first);
      if (isPgn(value, first, isSaid)) take(value, first);
      else if (value >= leastNoted && !first.includes(',')) whyNot.push(noMessage(first));
      continue;
    }
    const range = rangeOf(first, last);
    if (range.whyNot !== undefined) whyNot.push(range.whyNot);
    const ends = new Set([numberOf(first), numberOf(last)]);
    for (const value of range.values) {
      if (isPgn(value, first, isSaid && ends.has(value))) take(value, whole);
      else if (ends.has(value) && value >= leastNoted) whyNot.push(noMessage(String(value)));
    }
  }
  for (const [, text = ''] of line.matchAll(namedPgn)) {
    if (numberOf(text) > 0) take(numberOf(text), text);
  }
  for (const [text] of line.matchAll(afterStroke))
    whyNot.push(`What follows the stroke in ${text} is not read. Write the numbers in full.`);
  return { found: [...found.values()], whyNot };
};

/** Two letters of who talks, as they stand before the letters of a sentence (source: raymond-nmea). */
const talkers =
  'AG AI AP CD CV DE DF EC EP ER GA GB GL GN GP HC HE HN II IN LC QZ RA SD SN SS TI TR VD VM VR VW WI YX ZA ZC ZQ ZV';
const talker = `(?:${talkers.replaceAll(' ', '|')}|--|xx|XX)`;
const dollared = /[$!](?:(P[A-Z]{3,5})|([A-Z-]{2}|xx)([A-Z]{3}))(?![A-Za-z])/g;
const fiveLetters = new RegExp(`(?<![\\w$!])(?:${talker})([A-Z]{3})(?![\\w])`, 'g');
const threeLetters = /(?<![\w$!])([A-Z]{3})(?![\w])/g;
/** Letters of sentences that are words of the trade as well. */
const words: ReadonlySet<string> = new Set(['DSC']);
const listOfSentences = /^[\s,;/|&•·*-]*(?:(?:and|or)\s+)?(?:[A-Z]{3}(?:[\s,;/|&•·*-]|\band\b|\bor\b)*)+$/;

const sentenceOf = (letters: string, from: string): PastedMessage => ({
  sentence: letters,
  from,
  ...(sentenceInfo(letters) === undefined
    ? { doubt: `${letters} is in no table: it is taken as it stands and gives no reading.` }
    : {}),
});

/**
 * The sentences in a line. Three bare letters count only where they begin the line, where the line is nothing but such
 * letters, or where it is about sentences: "DSC" is a word as well.
 */
export const sentencesIn = (line: string, isAboutSentences: boolean): MessagesInLine => {
  const found = new Map<string, PastedMessage>();
  const whyNot: string[] = [];
  const take = (letters: string, from: string): void => {
    if (!found.has(letters)) found.set(letters, sentenceOf(letters, from));
  };
  for (const [whole, own, , letters] of line.matchAll(dollared)) {
    if (letters !== undefined) take(letters, whole);
    else if (own !== undefined) whyNot.push(`${whole} is a maker’s own sentence, of which nothing public is known.`);
  }
  for (const [whole, letters = ''] of line.matchAll(fiveLetters))
    if (sentenceInfo(letters) !== undefined) take(letters, whole);
  const isAbout = isAboutSentences || found.size > 0 || listOfSentences.test(line);
  for (const { 1: letters = '', index } of line.matchAll(threeLetters)) {
    const begins = line.slice(0, index).trim() === '' && !words.has(letters);
    if (sentenceInfo(letters) !== undefined && (isAbout || begins)) take(letters, letters);
  }
  return { found: [...found.values()], whyNot };
};
