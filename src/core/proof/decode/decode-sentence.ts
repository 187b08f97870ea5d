import type { DecodedValue } from './decoded-value.ts';
import { readSentence } from './sentence.ts';
import { sentenceFields } from './sentence-fields.ts';
import { instrumentSentences, type SentenceDecoder } from './sentence-instruments.ts';
import { navigationSentences } from './sentence-navigation.ts';

const decoders: ReadonlyMap<string, SentenceDecoder> = new Map([
  ...Object.entries(instrumentSentences),
  ...Object.entries(navigationSentences),
]);

/** Two letters of the talker and three of the formatter; what begins with P is a maker’s own. */
const addressPattern = /^(?!P)[A-Z][A-Z0-9]([A-Z]{3})$/;

/**
 * The values a sentence holds, in the same quantities and units as those of the bus. Empty fields, and values that their
 * own sentence calls invalid, are absent; a sentence with a wrong checksum has none.
 *
 * @example decodeSentence('$SDDPT,12.3,-1.5*4E') // depth 12.3 m below the transducer, offset -1.5 m
 */
export const decodeSentence = (text: string): readonly DecodedValue[] => {
  const sentence = readSentence(text);
  if (sentence === undefined || sentence.checksum === 'wrong') return [];
  const [address = ''] = sentence.body.split(',', 1);
  const [, formatter = ''] = addressPattern.exec(address) ?? [];
  const decode = decoders.get(formatter);
  return decode === undefined ? [] : decode(sentenceFields(sentence.body));
};
