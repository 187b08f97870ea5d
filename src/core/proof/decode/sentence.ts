/** One line of NMEA 0183, taken apart as far as its checksum goes. */
export interface ReadSentence {
  /** what stands between the start character and the star */
  readonly body: string;
  /** characters from the start character to CR LF, as the line carried them */
  readonly chars: number;
  readonly computed: string;
  /** a wrong one is dropped and counted; an absent one proves nothing, and old talkers send none */
  readonly checksum: 'right' | 'wrong' | 'absent';
}

const endChars = '\r\n'.length;
const pattern = /^[$!]([^*\r\n]+)(?:\*([0-9A-Fa-f]{2}))?$/;

/**
 * Checksum of a sentence: XOR of the characters between start character and star, two hexadecimal digits
 * (source: raymond-nmea).
 *
 * @example sentenceChecksum('IIHDT,,T') // '0C'
 */
export const sentenceChecksum = (body: string): string =>
  [...body]
    .reduce((sum, char) => sum ^ ((char.codePointAt(0) ?? 0) & 0xff), 0)
    .toString(16)
    .toUpperCase()
    .padStart(2, '0');

/** A line of text as a sentence, with or without its CR LF; undefined for anything that is none. */
export const readSentence = (line: string): ReadSentence | undefined => {
  const text = line.replace(/\r?\n$/, '');
  const [, body, given] = pattern.exec(text) ?? [];
  if (body === undefined) return undefined;
  const computed = sentenceChecksum(body);
  return {
    body,
    chars: text.length + endChars,
    computed,
    checksum: given === undefined ? 'absent' : given.toUpperCase() === computed ? 'right' : 'wrong',
  };
};
