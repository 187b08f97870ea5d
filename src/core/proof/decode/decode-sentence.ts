import type { DecodedValue } from './decoded-value.ts';
import { readSentence } from './sentence.ts';
import { sentenceFields } from './sentence-fields.ts';
import { instrumentSentences, type SentenceDecoder } from './sentence-instruments.ts';
import { navigationSentences } from './sentence-navigation.ts';
import { type SentenceParts, sentenceParts } from './sentence-parts.ts';

const decoders: ReadonlyMap<string, SentenceDecoder> = new Map([
  ...Object.entries(instrumentSentences),
  ...Object.entries(navigationSentences),
]);

/** What begins with P is a maker’s own. */
const talkerPattern = /^(?!P)[A-Z][A-Z0-9]$/;

/** The values of a sentence that was taken apart already; its checksum is not looked at. */
export const decodeParts = ({ talker, formatter, fields }: SentenceParts): readonly DecodedValue[] =>
  (talkerPattern.test(talker) ? decoders.get(formatter)?.(sentenceFields(fields)) : undefined) ?? [];

/**
 * The values a sentence holds, in the same quantities and units as those of the bus. Empty fields, and values that their
 * own sentence calls invalid, are absent; a sentence with a wrong checksum has none.
 *
 * @example decodeSentence('$SDDPT,12.3,-1.5*4E') // depth 12.3 m below the transducer, offset -1.5 m
 */
export const decodeSentence = (text: string): readonly DecodedValue[] => {
  const sentence = readSentence(text);
  return sentence === undefined || sentence.checksum === 'wrong' ? [] : decodeParts(sentenceParts(sentence.body));
};
