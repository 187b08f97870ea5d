import type { ReaderCounts, RecordedFrame } from '../../src/core/proof/readers/recorded-frame.ts';
import { startRecordingReader } from '../../src/core/proof/readers/recording-reader.ts';

/** A frame as found, with its own copy of the data. */
export type FoundFrame = Omit<RecordedFrame, 'data'> & { readonly data: readonly number[] };

/** Reads a whole recording in pieces of so many bytes and keeps every frame. */
export const readRecording = (
  bytes: Uint8Array,
  pieceBytes = 65_536,
): { readonly frames: FoundFrame[]; readonly counts: ReaderCounts } => {
  const frames: FoundFrame[] = [];
  const reader = startRecordingReader((frame) => {
    frames.push({ ...frame, data: [...frame.data.subarray(0, frame.remote ? 0 : frame.length)] });
  });
  for (let at = 0; at < bytes.length; at += pieceBytes) reader.push(bytes.subarray(at, at + pieceBytes));
  return { frames, counts: reader.end() };
};
