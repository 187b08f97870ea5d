import { looksLikePcap } from './pcap-reader.ts';

/** What a recording begins as. `text` = candump text as far as can be told; its lines show the rest. */
export type RecordingFormat = 'text' | 'pcap' | 'pcapng' | 'gzip' | 'sentences' | 'other';

const startsWith = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, at) => bytes[at] === byte);

const dollar = 0x24;
const exclamation = 0x21;
const backslash = 0x5c;
const hash = 0x23;
const lineFeed = 10;

/** First byte of the first line that is neither empty nor a comment. */
const firstOfContent = (head: Uint8Array): number | undefined => {
  let at = 0;
  while (at < head.length) {
    while (at < head.length && (head[at] ?? 0) <= 0x20) at += 1;
    if (head[at] !== hash) return head[at];
    const feed = head.indexOf(lineFeed, at);
    if (feed < 0) return undefined;
    at = feed + 1;
  }
  return undefined;
};

/**
 * Tells from its first bytes what a recording is; four bytes tell the binary forms, a few hundred the text forms.
 *
 * @example detectFormat(bytesOf('$GPGGA,…')) // 'sentences'
 */
export const detectFormat = (head: Uint8Array): RecordingFormat => {
  if (looksLikePcap(head)) return 'pcap';
  if (startsWith(head, 0x0a, 0x0d, 0x0d, 0x0a)) return 'pcapng';
  if (startsWith(head, 0x1f, 0x8b)) return 'gzip';
  if (head.includes(0)) return 'other';
  const first = firstOfContent(head);
  return first === dollar || first === exclamation || first === backslash ? 'sentences' : 'text';
};
