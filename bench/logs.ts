import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { FromPgn } from '@canboat/canboatjs';
import { startLineReader } from '../src/core/proof/readers/line-reader.ts';
import type { RecordingReader } from '../src/core/proof/readers/recording-reader-shape.ts';
import { startSurvey } from '../src/core/proof/survey/survey.ts';
import { recordBus } from '../tests/recordings/invented-bus.ts';
import { candumpBytes } from '../tests/recordings/write-recording.ts';

const lineCount = 500_000;
const sampleLines = 20_000;
const targetPerS = 2_000_000;
const runs = 5;

const writeLog = (path: string): Uint8Array => {
  const frames = recordBus({ seconds: 60 });
  const spanUs = (frames.at(-1)?.timeUs ?? 0) - (frames[0]?.timeUs ?? 0) + 1000;
  const file = openSync(path, 'w');
  let written = 0;
  for (let round = 0; written < lineCount; round += 1) {
    const part = frames.slice(0, lineCount - written);
    writeSync(file, candumpBytes(part.map((frame) => ({ ...frame, timeUs: frame.timeUs + round * spanUs }))));
    written += part.length;
  }
  closeSync(file);
  return candumpBytes(frames);
};

/** Reads the file in pieces of 1 MB, as a stream would bring it. */
const readThrough = (path: string, reader: RecordingReader): void => {
  const piece = new Uint8Array(1 << 20);
  const file = openSync(path, 'r');
  for (let length = readSync(file, piece); length > 0; length = readSync(file, piece)) {
    reader.push(piece.subarray(0, length));
  }
  closeSync(file);
  const { frames, broken } = reader.end();
  if (frames !== lineCount || broken !== 0) throw new Error(`Read ${frames} frames and ${broken} broken lines.`);
};

const bestS = (run: () => void): number => {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return (performance.now() - start) / 1000;
  });
  return Math.min(...times);
};

const decodeSample = (sample: readonly string[]): void => {
  const parser = new FromPgn();
  parser.on('error', () => undefined);
  parser.on('warning', () => undefined);
  for (const line of sample) parser.parseString(line);
};

const folder = mkdtempSync(join(tmpdir(), 'fairlead-logs-'));
const path = join(folder, 'bus.log');
try {
  const sample = new TextDecoder().decode(writeLog(path)).split('\n').filter(Boolean);
  const decoded = Array.from({ length: sampleLines }, (_unused, at) => sample[at % sample.length] ?? '');

  let seen = 0;
  const reader =
    lineCount / bestS(() => readThrough(path, startLineReader({ onFrame: (frame) => (seen += frame.length) })));
  const heapBefore = process.memoryUsage().heapUsed;
  const survey = lineCount / bestS(() => readThrough(path, startLineReader(startSurvey())));
  const heapGrownMb = (process.memoryUsage().heapUsed - heapBefore) / 1e6;
  const words = lineCount / bestS(() => spawnSync('wc', ['-l', path]));
  const peer = sampleLines / bestS(() => decodeSample(decoded));

  const line = (what: string, perS: number, beside: string): string =>
    `${what.padEnd(34)}${(perS / 1e6).toFixed(2).padStart(8)} million lines/s   ${beside}`;
  console.log(`candump text, ${lineCount} lines, best of ${runs} runs, ${seen / 1e6} million data bytes read`);
  console.log(line('reader alone', reader, `${(reader / targetPerS).toFixed(1)} x the target of 2 million`));
  console.log(line('full survey', survey, `${(survey / targetPerS).toFixed(1)} x the target of 2 million`));
  console.log(line('wc -l', words, `the reader takes ${(words / reader).toFixed(1)} x its time`));
  console.log(line('@canboat/canboatjs, sample', peer, `the survey takes 1/${(survey / peer).toFixed(0)} of its time`));
  console.log(`heap grown over ${runs} surveys: ${heapGrownMb.toFixed(1)} MB`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
