import { createReadStream } from 'node:fs';
import { UserError } from '../core/boat/user-error.ts';
import { formsRead, startRecordingReader } from '../core/proof/readers/recording-reader.ts';
import type { ReaderCounts } from '../core/proof/readers/recording-reader-shape.ts';
import type { RecordingSink } from '../core/proof/readers/recording-sink.ts';

const cannotRead = (path: string, cause: unknown): UserError => {
  const code = (cause as NodeJS.ErrnoException).code;
  const says =
    code === 'ENOENT'
      ? 'There is no such recording.'
      : code === 'EISDIR'
        ? 'This is a folder, not a recording.'
        : 'This recording cannot be read.';
  return new UserError({ says, place: path, whatToDo: `${formsRead} - stands for standard input.` });
};

/**
 * Reads a recording chunk by chunk, so that its size does not matter; `-` = standard input.
 *
 * @throws UserError for a file that is missing or is no recording
 */
export const readInto = async (path: string, sink: RecordingSink): Promise<ReaderCounts> => {
  const reader = startRecordingReader(sink);
  const stream = path === '-' ? process.stdin : createReadStream(path, { highWaterMark: 1 << 20 });
  try {
    for await (const chunk of stream) reader.push(chunk as Uint8Array);
    return reader.end();
  } catch (cause) {
    throw cause instanceof UserError
      ? new UserError({ says: cause.says, place: path, whatToDo: cause.whatToDo })
      : cannotRead(path, cause);
  }
};
