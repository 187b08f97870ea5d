import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readSync, rmSync, statSync, writeFileSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { FromPgn } from '@canboat/canboatjs';
import { gzipSync } from 'fflate';
import { startLineReader } from '../src/core/proof/readers/line-reader.ts';
import { startRecordingReader } from '../src/core/proof/readers/recording-reader.ts';
import type { RecordingReader } from '../src/core/proof/readers/recording-reader-shape.ts';
import { startSurvey } from '../src/core/proof/survey/survey.ts';
import type { RecordedFrame } from '../tests/recordings/invented-bus.ts';
import { recordBus } from '../tests/recordings/invented-bus.ts';
import { candumpBytes, csvBytes, garbage, pcapBytes, pcapngBytes } from '../tests/recordings/write-recording.ts';
import { tell } from './figure.ts';

const lineCount = 500_000;
const sampleLines = 20_000;
const targetPerS = 2;
const stretchPerS = 4;
const grownMb = 20;
const runs = 5;

type Writer = (frames: readonly RecordedFrame[]) => Uint8Array;

const minute = recordBus({ seconds: 60 });
const spanUs = (minute.at(-1)?.timeUs ?? 0) - (minute[0]?.timeUs ?? 0) + 1000;

/** Frames of the invented bus, minute after minute. */
const writeLog = (path: string, write: Writer): void => {
  const file = openSync(path, 'w');
  for (let written = 0, round = 0; written < lineCount; round += 1) {
    const part = minute.slice(0, lineCount - written);
    writeSync(file, write(part.map((frame) => ({ ...frame, timeUs: frame.timeUs + round * spanUs }))));
    written += part.length;
  }
  closeSync(file);
};

/** One file of a form that has a head, of all the frames. */
const writeWhole = (path: string, write: Writer): void => {
  const rounds = Math.ceil(lineCount / minute.length);
  const frames = Array.from({ length: rounds }, (_unused, round) =>
    minute.map((frame) => ({ ...frame, timeUs: frame.timeUs + round * spanUs })),
  ).flat();
  writeFileSync(path, write(frames.slice(0, lineCount)));
};

const sentences = ['$SDDPT,12.3,-1.5*4E', '$IIMWV,338,R,13.41,N,A*2C', '$GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A*1A'];
const writeSentences = (path: string): void =>
  writeFileSync(
    path,
    garbage(
      Array.from({ length: lineCount }, (_unused, at) => `${1_777_636_800 + at / 10} ${sentences[at % 3]}\r\n`).join(
        '',
      ),
    ),
  );

/** Reads the file in pieces of 1 MB, as a stream would bring it. */
const readThrough = (path: string, reader: RecordingReader): void => {
  const piece = new Uint8Array(1 << 20);
  const file = openSync(path, 'r');
  for (let length = readSync(file, piece); length > 0; length = readSync(file, piece)) {
    reader.push(piece.subarray(0, length));
  }
  closeSync(file);
  const { frames, sentences: said, broken } = reader.end();
  if (frames + said !== lineCount || broken !== 0) throw new Error(`Read ${frames + said} and ${broken} broken.`);
};

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 1;

/**
 * Things done in a second of one core: by the time the process was given, not by the clock on the wall, so that
 * neighbours on the machine do not count. The median of a few runs, each long enough to be warm in itself.
 */
const perS = (count: number, run: () => void): number => {
  const times = Array.from({ length: runs }, () => {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    return user + system;
  });
  return (count * 1e6) / median(times);
};

/** The same of another program, which is known by the clock on the wall only. */
const perWallS = (count: number, run: () => void): number => {
  const times = Array.from({ length: runs * 3 }, () => {
    const startMs = performance.now();
    run();
    return performance.now() - startMs;
  });
  return (count * 1000) / median(times);
};

const million = (perSecond: number): number => perSecond / 1e6;

const decodeSample = (sample: readonly string[]): void => {
  const parser = new FromPgn();
  parser.on('error', () => undefined);
  parser.on('warning', () => undefined);
  for (const one of sample) parser.parseString(one);
};

const folder = mkdtempSync(join(tmpdir(), 'fairlead-logs-'));
const pathOf = (name: string): string => join(folder, name);
const forms: readonly (readonly [what: string, write: (path: string) => void])[] = [
  ['candump text', (path) => writeLog(path, (frames) => candumpBytes(frames))],
  ['candump text, older columns', (path) => writeLog(path, (frames) => candumpBytes(frames, { style: 'old-columns' }))],
  ['commas', (path) => writeLog(path, (frames) => csvBytes(frames))],
  ['pcap', (path) => writeWhole(path, (frames) => pcapBytes(frames))],
  ['pcapng', (path) => writeWhole(path, (frames) => pcapngBytes(frames))],
  ['sentences with a stamp', writeSentences],
  ['candump text, packed', (path) => writeWhole(path, (frames) => gzipSync(candumpBytes(frames), { level: 6 }))],
];

try {
  console.log(`recordings of ${lineCount} lines or records, median of ${runs} runs, a second of one core`);
  const speeds = new Map<string, number>();
  for (const [what, write] of forms) {
    write(pathOf(what));
    const mb = statSync(pathOf(what)).size / 1e6;
    let seen = 0;
    const speed = perS(lineCount, () =>
      readThrough(
        pathOf(what),
        startRecordingReader({ onFrame: ({ length }) => (seen += length), onSentence: ({ chars }) => (seen += chars) }),
      ),
    );
    speeds.set(what, speed);
    tell({
      what: `${what}: read`,
      value: million(speed),
      unit: 'million/s',
      more: true,
      ...(what === 'candump text' ? { limit: targetPerS, stretch: stretchPerS } : {}),
      note: `${((mb * speed) / lineCount).toFixed(0)} MB/s of file`,
    });
  }
  const path = pathOf('candump text');
  const reader = speeds.get('candump text') ?? 0;
  globalThis.gc?.();
  const heapBefore = process.memoryUsage().heapUsed;
  const survey = perS(lineCount, () => readThrough(path, startLineReader(startSurvey())));
  globalThis.gc?.();
  const heapGrownMb = (process.memoryUsage().heapUsed - heapBefore) / 1e6;
  const words = perWallS(lineCount, () => void spawnSync('wc', ['-l', path]));
  const sample = new TextDecoder().decode(candumpBytes(minute)).split('\n').filter(Boolean);
  const decoded = Array.from({ length: sampleLines }, (_unused, at) => sample[at % sample.length] ?? '');
  const peer = perS(sampleLines, () => decodeSample(decoded));
  tell({
    what: 'candump text: read and surveyed in full',
    value: million(survey),
    unit: 'million/s',
    more: true,
    limit: targetPerS,
    stretch: stretchPerS,
    beside: [
      { name: 'wc -l on the same file', value: million(words) },
      { name: '@canboat/canboatjs, decoding a sample', value: million(peer) },
    ],
    note: `a second of one core, median of ${runs} runs over ${lineCount} lines; read alone ${million(reader).toFixed(2)}`,
  });
  tell({ what: `heap grown over ${runs} surveys`, value: heapGrownMb, unit: 'MB', limit: grownMb });
} finally {
  rmSync(folder, { recursive: true, force: true });
}
