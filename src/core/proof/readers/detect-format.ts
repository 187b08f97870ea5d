import { looksLikeGzip } from './gzip-reader.ts';
import { looksLikePcap } from './pcap-reader.ts';
import { looksLikePcapng } from './pcapng-reader.ts';

/** What a recording begins as. `text` = lines, of whichever kind: each line shows for itself. */
export type RecordingFormat = 'text' | 'pcap' | 'pcapng' | 'gzip' | 'other';

/** Beyond this share of bytes that no line of a recording has, it is no text. */
const mostControlShare = 0.3;

const isControl = (byte: number): boolean => byte < 0x20 && byte !== 9 && byte !== 10 && byte !== 13;

/**
 * Tells from its first bytes what a recording is; four bytes tell the binary forms. A few bytes of noise, as a port
 * gives when it is opened, leave it text.
 *
 * @example detectFormat(bytesOf('$GPGGA,…')) // 'text'
 */
export const detectFormat = (head: Uint8Array): RecordingFormat => {
  if (looksLikePcap(head)) return 'pcap';
  if (looksLikePcapng(head)) return 'pcapng';
  if (looksLikeGzip(head)) return 'gzip';
  const controls = head.reduce((count, byte) => count + (isControl(byte) ? 1 : 0), 0);
  return controls > head.length * mostControlShare ? 'other' : 'text';
};
