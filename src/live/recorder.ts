import { closeSync, createWriteStream, fstat, fstatSync, ftruncateSync, openSync, readSync, rmSync } from 'node:fs';
import type { LiveLine } from '../core/proof/live/live-lines.ts';
import type { RecordingState } from '../core/proof/live/live-snapshot.ts';
import { fileRefusal } from '../node/files/file-refusal.ts';

/** Writes to a file what comes in. It throws nothing, and never holds listening up. */
export interface Recorder {
  line(line: LiveLine, nowMs: number): void;
  /** what Fairlead itself did, as a comment: a link lost, a frame sent */
  note(says: string, nowMs: number): void;
  state(): RecordingState;
  /** Comes back when all of it is in the file. */
  stop(): Promise<void>;
}

/** More than this waiting for a slow disk is given up, so that memory does not fill. */
const mostWaitingBytes = 8_000_000;

const lineFeed = 10;
/** A line that a disk cut off is far shorter. */
const longestTail = 1_000_000;

const stampOf = (nowMs: number): string => {
  const us = Math.round(nowMs * 1000);
  return `(${Math.floor(us / 1_000_000)}.${String(us % 1_000_000).padStart(6, '0')})`;
};

/** A line as it is recorded: as it came where it has a time, else with the time it came. */
const recorded = (line: LiveLine, nowMs: number): string | undefined => {
  if (line.text === '') return undefined;
  return /^\s*\(/.test(line.text) || line.kind === 'comment' ? line.text : `${stampOf(nowMs)} ${line.text}`;
};

/** A file that is recorded to, as it was before. */
interface Opened {
  readonly fd: number;
  readonly size: number;
  readonly ino: number;
  /** it ends in the middle of a line; looked at before a byte is put behind it */
  readonly isCutOff: boolean;
}

const opened = (path: string): Opened => {
  try {
    const fd = openSync(path, 'a+');
    const { size, ino } = fstatSync(fd);
    const last = new Uint8Array(1);
    const isCutOff = size > 0 && readSync(fd, last, 0, 1, size - 1) === 1 && last[0] !== lineFeed;
    return { fd, size, ino, isCutOff };
  } catch (error) {
    throw fileRefusal(error, path);
  }
};

/** How much of a file holds whole lines, of what lies behind `from`. */
const wholeLines = (fd: number, from: number): number => {
  const { size } = fstatSync(fd);
  const tail = new Uint8Array(Math.min(size - from, longestTail));
  readSync(fd, tail, 0, tail.length, size - tail.length);
  return size - tail.length + tail.lastIndexOf(lineFeed) + 1;
};

/** Takes away the line that a full disk cut off, and the file where not one line came into it. */
const tidy = (path: string, { size, ino }: Opened): void => {
  let fd: number | undefined;
  try {
    fd = openSync(path, 'r+');
    const found = fstatSync(fd);
    // something else may stand there by now
    if (found.ino !== ino || !found.isFile() || found.size < size) return;
    const whole = Math.max(size, wholeLines(fd, size));
    if (whole === 0) rmSync(path);
    else if (whole < found.size) ftruncateSync(fd, whole);
  } catch {
    // a disk that refuses this too is left alone: what is cut off is read all the same
  } finally {
    if (fd !== undefined) closeSync(fd);
  }
};

const whyStopped = (cause: unknown): string => {
  const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
  return code === 'ENOSPC' || code === 'EDQUOT' ? 'The disk is full' : 'The recording cannot be written on';
};

/**
 * Starts a recording on the end of a file, made where there is none: candump lines and sentences, each with the time it
 * came as `(seconds.microseconds)`. Noise is not kept. A file cut off in the middle of a line is read all the same.
 *
 * @throws UserError where the file cannot be opened; from then on trouble is told by its state
 */
export const startRecorder = (path: string, { lookEveryMs = 5000 }: { lookEveryMs?: number } = {}): Recorder => {
  let lines = 0;
  let safeLines = 0;
  let bytes = 0;
  let trouble: string | undefined;
  const file = opened(path);
  const stream = createWriteStream(path, { fd: file.fd });

  const stopBy = (why: string): void => {
    trouble ??= why;
    clearInterval(looking);
    stream.destroy();
  };
  const write = (text: string, encoding: BufferEncoding, done: () => void = () => undefined): void => {
    if (stream.writableLength > mostWaitingBytes) stopBy('The disk is too slow');
    if (trouble !== undefined) return;
    stream.write(`${text}\n`, encoding, (error) => {
      if (error === undefined || error === null) done();
    });
    bytes += text.length + 1;
  };

  // a file that was taken away takes in all that is written to it, and is nowhere
  const looking = setInterval(
    () =>
      fstat(
        file.fd,
        (_, found) =>
          void (found?.nlink === 0 && !stream.destroyed && stopBy('The file of the recording was taken away')),
      ),
    lookEveryMs,
  ).unref();
  stream.on('error', (cause) => stopBy(whyStopped(cause)));
  if (file.isCutOff) write('\n# the line above was cut off', 'utf8');

  return {
    line(line, nowMs) {
      const text = recorded(line, nowMs);
      if (text === undefined) return;
      lines += 1;
      // each byte that came is one letter of the text
      write(text, 'latin1', () => {
        safeLines += 1;
      });
    },
    note: (says, nowMs) => write(`# ${stampOf(nowMs)} ${says}`, 'utf8'),
    state: () =>
      trouble === undefined
        ? { kind: 'writing', lines, bytes }
        : {
            kind: 'stopped',
            says: `${trouble}: recording has stopped, listening goes on.`,
            why: trouble,
            lines: safeLines,
          },
    stop: async () => {
      clearInterval(looking);
      if (!stream.closed) {
        await new Promise<void>((done) => {
          stream.once('close', () => done());
          stream.end();
        });
      }
      if (trouble !== undefined) tidy(path, file);
    },
  };
};
