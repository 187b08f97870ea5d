import { uint32At } from './file-words.ts';
import type { RecordedFrame } from './recorded-frame.ts';

/** Link type of a capture of the bus interface itself. */
export const socketCanLink = 227;

const extendedFlag = 0x8000_0000;
const remoteFlag = 0x4000_0000;
const errorFlag = 0x2000_0000;

/** Fills the frame from a record: identifier big-endian, length in byte 4, data from byte 8. False = no frame. */
export const readSocketCanRecord = (bytes: Uint8Array, frame: RecordedFrame): boolean => {
  const length = bytes[4] ?? 0;
  const flagged = uint32At(bytes, 0, false);
  frame.extended = (flagged & extendedFlag) !== 0;
  frame.remote = (flagged & remoteFlag) !== 0;
  frame.error = (flagged & errorFlag) !== 0;
  frame.id = flagged & (frame.extended || frame.error ? 0x1fff_ffff : 0x7ff);
  frame.length = length;
  if (length > 8 || bytes.length < 8 + (frame.remote ? 0 : length)) return false;
  for (let at = 0; at < length; at += 1) frame.data[at] = bytes[8 + at] ?? 0;
  return true;
};
