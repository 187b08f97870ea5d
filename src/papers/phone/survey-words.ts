import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { EntryOf } from '../../core/log/log-entry.ts';
import type { SurveyEntry } from '../../core/log/survey-edits.ts';
import { endWords } from '../lists/end-words.ts';
import { wayWords } from '../lists/order-words.ts';
import { lengthInWords } from './length-in-words.ts';

type Names = Parameters<typeof wayWords>[0];

const nameOf = (names: Names, of: string): string =>
  names.ways.has(of) ? wayWords(names, of) : (names.places.get(of)?.name ?? endWords(names, of));

const seenWords = {
  so: 'seen, it is as the file says',
  pulled: 'a line was pulled through',
  not: 'it is not as the file says',
} as const satisfies Record<EntryOf<'seen'>['is'], string>;

const isWay = (names: Pick<BoatIndex, 'ways'>, of: string): boolean => names.ways.has(of);

const foundWords = (names: Names, entry: SurveyEntry): string => {
  switch (entry.kind) {
    case 'measure':
      return `${isWay(names, entry.of) ? '' : 'tail '}${lengthInWords(entry)}`;
    case 'seen':
      return seenWords[entry.is];
    case 'aboard':
      return [
        ...(entry.serial === undefined ? [] : ['serial number noted']),
        ...(entry.software === undefined ? [] : [`software ${entry.software}`]),
      ].join(', ');
    case 'photo':
      return `photo, ${entry.shows}`;
  }
};

/** What was found aboard in a line: what it is of, and what was found. A serial number stands in no line, as in no title of an edit. */
export const surveyWords = (names: Names, entry: SurveyEntry): string =>
  `${nameOf(names, entry.of)}: ${foundWords(names, entry)}`;
