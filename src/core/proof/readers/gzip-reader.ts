import { Gunzip } from 'fflate';
import { UserError } from '../../boat/user-error.ts';
import { uint32At } from './file-words.ts';
import type { ReaderCounts, RecordingReader } from './recording-reader-shape.ts';

/**
 * Packed bytes unpacked at a time. A byte unpacks to at most 1032, so that whatever is packed there, no more than 17 MB
 * of it are held at once.
 */
const pieceBytes = 16_384;
/** Packed bytes in a row that may come to nothing. */
const mostSilentBytes = 1_048_576;
const lengthBytes = 4;
/** Head, an empty block and the end. */
const leastFileBytes = 20;

/** Whether a recording begins as packed by gzip. */
export const looksLikeGzip = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;

const withDamage = (counts: ReaderCounts, damagedAt: number | undefined): ReaderCounts => ({
  ...counts,
  cutShort: true,
  ...(damagedAt === undefined
    ? {}
    : {
        broken: counts.broken + 1,
        brokenAt: [...counts.brokenAt, { byte: damagedAt, says: 'the packed file is damaged near here' }],
      }),
});

/**
 * Unpacks a recording on its way to the reader of what is inside. A file that ends too early, or is damaged, keeps what
 * came before and says so.
 */
export const startGzipReader = (inner: RecordingReader): RecordingReader => {
  const last = new Uint8Array(lengthBytes);
  let takenBytes = 0;
  let yieldedAt = 0;
  let memberBytes = 0;
  let damagedAt: number | undefined;
  let refusal: unknown;
  const unpacker = new Gunzip((piece) => {
    if (piece.length > 0) yieldedAt = takenBytes;
    memberBytes += piece.length;
    // The unpacker is in the middle of its own work: what the inner reader refuses is told once it is out of it.
    if (refusal !== undefined) return;
    try {
      inner.push(piece);
    } catch (cause) {
      refusal = cause;
    }
  });
  unpacker.onmember = () => {
    memberBytes = 0;
  };

  const unpack = (piece: Uint8Array, isLast: boolean): void => {
    try {
      unpacker.push(piece, isLast);
    } catch {
      if (!isLast) damagedAt = takenBytes;
    }
    if (refusal !== undefined) throw refusal;
    takenBytes += piece.length;
    // A head without end would be kept for ever.
    if (takenBytes - yieldedAt > mostSilentBytes) damagedAt ??= takenBytes;
  };

  /** The last four bytes say how long the unpacked file is: where they do not, the end is missing. */
  const isWhole = (): boolean => takenBytes >= leastFileBytes && uint32At(last, 0, true) === memberBytes % 2 ** 32;

  return {
    push(chunk) {
      const tail = chunk.subarray(-lengthBytes);
      last.copyWithin(0, tail.length);
      last.set(tail, lengthBytes - tail.length);
      for (let at = 0; at < chunk.length && damagedAt === undefined; at += pieceBytes)
        unpack(chunk.subarray(at, at + pieceBytes), false);
    },
    end() {
      if (damagedAt === undefined) unpack(new Uint8Array(0), true);
      const counts = inner.end();
      return damagedAt === undefined && isWhole() ? counts : withDamage(counts, damagedAt);
    },
  };
};

/** A recording packed twice is no recording a recorder makes, and might be made to fill the memory. */
export const packedTwice = (): UserError =>
  new UserError({ says: 'This recording is packed with gzip twice.', whatToDo: 'Unpack it once and give that.' });
