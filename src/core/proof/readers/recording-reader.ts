import { UserError } from '../../boat/user-error.ts';
import { detectFormat } from './detect-format.ts';
import { joinedBytes } from './file-words.ts';
import { packedTwice, startGzipReader } from './gzip-reader.ts';
import { startLineReader } from './line-reader.ts';
import { startPcapReader } from './pcap-reader.ts';
import { startPcapngReader } from './pcapng-reader.ts';
import type { RecordingReader } from './recording-reader-shape.ts';
import type { RecordingSink } from './recording-sink.ts';

/** Bytes waited for before the form of a recording is told; the whole of a shorter one. */
const headBytes = 512;

/** Every form that is read, as it is told where something else was given. */
export const formsRead =
  'Give candump text, comma-separated lines, NMEA 0183 text, pcap or pcapng, packed with gzip or not.';

/** What some editors put in front of a text; no form begins so otherwise. */
const byteOrderMark = [0xef, 0xbb, 0xbf] as const;
const isMarked = (head: Uint8Array): boolean => byteOrderMark.every((byte, at) => head[at] === byte);

/** Starts the reader that the first bytes of a recording ask for. */
const readerOf = (head: Uint8Array, sink: RecordingSink, isPacked: boolean): RecordingReader => {
  switch (detectFormat(head.subarray(0, headBytes))) {
    case 'text':
      return startLineReader(sink);
    case 'pcap':
      return startPcapReader(sink);
    case 'pcapng':
      return startPcapngReader(sink);
    case 'gzip':
      if (isPacked) throw packedTwice();
      return startGzipReader(startWaiting(sink, true));
    case 'other':
      throw new UserError({ says: 'This is not a recording of the bus.', whatToDo: formsRead });
  }
};

const startWaiting = (sink: RecordingSink, isPacked: boolean): RecordingReader => {
  let reader: RecordingReader | undefined;
  let head: Uint8Array = new Uint8Array(0);
  const begin = (): RecordingReader => {
    const begun = readerOf(head, sink, isPacked);
    begun.push(isMarked(head) ? head.subarray(byteOrderMark.length) : head);
    head = new Uint8Array(0);
    return begun;
  };
  return {
    push(chunk) {
      if (reader !== undefined) {
        reader.push(chunk);
        return;
      }
      head = joinedBytes(head, chunk);
      if (head.length >= headBytes) reader = begin();
      // A chunk may be used again by whoever gave it.
      else if (head === chunk) head = chunk.slice();
    },
    end: () => (reader ?? begin()).end(),
  };
};

/**
 * Reads a recording of any form, which its first bytes tell: lines of candump text, of commas and of sentences, pcap,
 * pcapng, and each of them packed with gzip. Throws UserError from `push` or `end` when it is none of them; damage
 * inside is counted, never fatal.
 *
 * @example const reader = startRecordingReader({ onFrame }); for await (const chunk of file) reader.push(chunk);
 */
export const startRecordingReader = (sink: RecordingSink): RecordingReader => startWaiting(sink, false);
