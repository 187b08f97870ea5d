import { closeSync, createWriteStream, fstatSync, openSync, readSync } from 'node:fs';
import type { LiveLine } from '../core/proof/live/live-lines.ts';
import type { RecordingState } from '../core/proof/live/live-snapshot.ts';

/** Writes to a file what comes in. It never throws, and never holds listening up. */
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

const stampOf = (nowMs: number): string => {
  const us = Math.round(nowMs * 1000);
  return `(${Math.floor(us / 1_000_000)}.${String(us % 1_000_000).padStart(6, '0')})`;
};

/** A line as it is recorded: as it came where it has a time, else with the time it came. */
const recorded = (line: LiveLine, nowMs: number): string | undefined => {
  if (line.text === '') return undefined;
  return /^\s*\(/.test(line.text) || line.kind === 'comment' ? line.text : `${stampOf(nowMs)} ${line.text}`;
};

/** Whether a recording that is there ends in the middle of a line; looked at before a byte is put behind it. */
const endsOpen = (path: string): boolean => {
  let file: number | undefined;
  try {
    file = openSync(path, 'r');
    const { size } = fstatSync(file);
    const last = new Uint8Array(1);
    return size > 0 && readSync(file, last, 0, 1, size - 1) === 1 && last[0] !== lineFeed;
  } catch {
    return false;
  } finally {
    if (file !== undefined) closeSync(file);
  }
};

const whyStopped = (cause: unknown): string => {
  const code = cause instanceof Error && 'code' in cause ? cause.code : undefined;
  if (code === 'ENOSPC' || code === 'EDQUOT') return 'The disk is full: recording has stopped, listening goes on.';
  return 'The recording cannot be written on: recording has stopped, listening goes on.';
};

const overflow = 'The disk is too slow: recording has stopped, listening goes on.';

/**
 * Starts a recording on the end of a file, made where there is none: candump lines and sentences, each with the time it
 * came as `(seconds.microseconds)`. Noise is not kept. A file cut off in the middle of a line is read all the same.
 */
export const startRecorder = (path: string): Recorder => {
  let lines = 0;
  let bytes = 0;
  let trouble: string | undefined;
  const isCutOff = endsOpen(path);
  const stream = createWriteStream(path, { flags: 'a' });

  const stopBy = (says: string): void => {
    trouble ??= says;
    stream.destroy();
  };
  const write = (text: string, encoding: BufferEncoding): void => {
    if (stream.writableLength > mostWaitingBytes) stopBy(overflow);
    if (trouble !== undefined) return;
    stream.write(`${text}\n`, encoding);
    bytes += text.length + 1;
  };

  stream.on('error', (cause) => stopBy(whyStopped(cause)));
  if (isCutOff) write('\n# the line above was cut off', 'utf8');

  return {
    line(line, nowMs) {
      const text = recorded(line, nowMs);
      if (text === undefined) return;
      lines += 1;
      // each byte that came is one letter of the text
      write(text, 'latin1');
    },
    note: (says, nowMs) => write(`# ${stampOf(nowMs)} ${says}`, 'utf8'),
    state: () =>
      trouble === undefined ? { kind: 'writing', lines, bytes } : { kind: 'stopped', says: trouble, lines },
    stop: () =>
      new Promise((done) => {
        if (stream.closed) return done();
        stream.once('close', () => done());
        stream.end();
      }),
  };
};
