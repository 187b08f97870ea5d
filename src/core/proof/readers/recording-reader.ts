import { UserError } from '../../boat/user-error.ts';
import { startCandumpReader } from './candump-reader.ts';
import { detectFormat, type RecordingFormat } from './detect-format.ts';
import { startPcapReader } from './pcap-reader.ts';
import type { RecordedFrame, RecordingReader } from './recorded-frame.ts';

/** Bytes waited for before the form of a recording is told; the whole of a shorter one. */
const headBytes = 512;

type OnFrame = (frame: RecordedFrame) => void;

const refusal = (says: string, whatToDo: string): UserError => new UserError({ says, whatToDo });

const readerOf = (format: RecordingFormat, onFrame: OnFrame): RecordingReader => {
  switch (format) {
    case 'text':
      return startCandumpReader(onFrame);
    case 'pcap':
      return startPcapReader(onFrame);
    case 'pcapng':
      throw refusal('This is a pcapng file.', 'Save it again as plain pcap.');
    case 'gzip':
      throw refusal('This recording is packed with gzip.', 'Unpack it first.');
    case 'sentences':
      throw refusal('This is NMEA 0183 text, not a recording of the bus.', 'Give candump text or a pcap file.');
    case 'other':
      throw refusal('This is not a recording of the bus.', 'Give candump text or a pcap file.');
  }
};

/**
 * Reads a recording of the bus, candump text or pcap, whichever its first bytes say. Throws UserError from `push` or
 * `end` when it is neither; damage inside is counted, never fatal.
 *
 * @example for await (const chunk of file) reader.push(chunk);
 */
export const startRecordingReader = (onFrame: OnFrame): RecordingReader => {
  let reader: RecordingReader | undefined;
  let head = new Uint8Array(0);
  const begin = (): RecordingReader => {
    const begun = readerOf(detectFormat(head.subarray(0, headBytes)), onFrame);
    begun.push(head);
    head = new Uint8Array(0);
    return begun;
  };
  return {
    push(chunk) {
      if (reader !== undefined) {
        reader.push(chunk);
        return;
      }
      const joined = new Uint8Array(head.length + chunk.length);
      joined.set(head);
      joined.set(chunk, head.length);
      head = joined;
      if (head.length >= headBytes) reader = begin();
    },
    end: () => (reader ?? begin()).end(),
  };
};
