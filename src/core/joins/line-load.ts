import type { Sends } from '../boat/sheet.ts';
import { nmea0183 } from '../facts/nmea0183.ts';
import { usualEveryMs } from '../facts/sentence-rates.ts';
import { sentences } from '../facts/sentences.ts';

/** How full a 0183 line is. */
export interface LineLoad {
  readonly charsPerS: number;
  /** of what the line carries at its speed */
  readonly sharePct: number;
}

const charsOf = new Map(sentences.map(({ letters, chars }) => [letters, chars?.median ?? nmea0183.sentenceMost.value]));

/** Characters of a sentence as usual, start and CR LF included; one nobody has measured is as long as there may be. */
export const sentenceChars = (letters: string): number => charsOf.get(letters) ?? nmea0183.sentenceMost.value;

/** Characters a second of what one port sends; sentences that come on event only are not in it. */
export const charsPerSecond = (sends: readonly Sends[]): number =>
  sends.reduce((sum, { sentence, everyMs }) => {
    if (sentence === undefined) return sum;
    const every = everyMs ?? usualEveryMs(sentence);
    return every === undefined ? sum : sum + (sentenceChars(sentence) * 1000) / every;
  }, 0);

/**
 * Load of a line: sum(characters x rate) over the characters a second the line carries, baud / 10. A sentence nobody has
 * measured counts as the longest there may be. Sources: computed-serial, recorded-sentence-lengths, usual-sentence-lengths.
 *
 * @example lineLoad({ charsPerS: 432, baud: 4800 }) // { charsPerS: 432, sharePct: 90 }
 */
export const lineLoad = ({ charsPerS, baud }: { charsPerS: number; baud: number }): LineLoad => ({
  charsPerS,
  sharePct: (100 * charsPerS) / (baud / nmea0183.bitsPerChar.value),
});
