import type { RecordedFrame } from '../../src/core/proof/readers/recorded-frame.ts';
import { startRecordingReader } from '../../src/core/proof/readers/recording-reader.ts';
import type { ReaderCounts } from '../../src/core/proof/readers/recording-reader-shape.ts';
import type { RecordedMessage, RecordedSentence } from '../../src/core/proof/readers/recording-sink.ts';

/** A frame as found, with its own copy of the data. */
export type FoundFrame = Omit<RecordedFrame, 'data'> & { readonly data: readonly number[] };

/** A joined message as found, with its own copy of the data. */
export type FoundMessage = Omit<RecordedMessage, 'data'> & { readonly data: readonly number[] };

/** Everything found in a recording. */
export interface FoundRecording {
  readonly frames: readonly FoundFrame[];
  readonly messages: readonly FoundMessage[];
  readonly sentences: readonly RecordedSentence[];
  readonly counts: ReaderCounts;
}

/** Reads a whole recording in pieces of so many bytes and keeps everything in it. */
export const readRecording = (bytes: Uint8Array, pieceBytes = 65_536): FoundRecording => {
  const frames: FoundFrame[] = [];
  const messages: FoundMessage[] = [];
  const sentences: RecordedSentence[] = [];
  const reader = startRecordingReader({
    onFrame: (frame) => {
      frames.push({ ...frame, data: [...frame.data.subarray(0, frame.remote ? 0 : frame.length)] });
    },
    onMessage: (message) => {
      messages.push({ ...message, data: [...message.data] });
    },
    onSentence: (sentence) => {
      sentences.push(sentence);
    },
  });
  for (let at = 0; at < bytes.length; at += pieceBytes) reader.push(bytes.subarray(at, at + pieceBytes));
  return { frames, messages, sentences, counts: reader.end() };
};
