import { parseArgs } from 'node:util';
import { gzipSync } from 'fflate';
import { startRecordingReader } from '../src/core/proof/readers/recording-reader.ts';
import { startSurvey } from '../src/core/proof/survey/survey.ts';
import { recordBus } from '../tests/recordings/invented-bus.ts';
import { mutateBytes, startLot } from '../tests/recordings/mutate-bytes.ts';
import { soundFiles, soundLines } from '../tests/recordings/sound-recordings.ts';
import { startTakingLines, takeFile } from '../tests/recordings/take-all.ts';
import { candumpBytes } from '../tests/recordings/write-recording.ts';

// Damaged recordings without end, and one of any length, while the memory is watched. Nothing is kept on the disk.
//   npm run fuzz:recordings -- --lines 10000000 --files 20000 --gigabytes 4 --seed 1

const { values } = parseArgs({
  options: {
    lines: { type: 'string', default: '10000000' },
    files: { type: 'string', default: '20000' },
    gigabytes: { type: 'string', default: '4' },
    seed: { type: 'string', default: '1' },
  },
});

const mostGrowthMb = 200;
const lineFeed = 10;
const bytesInMb = 1_048_576;
const rssMb = (): number => process.memoryUsage().rss / bytesInMb;

/** Watches what the process holds; a growth behind the first tenth of the work is a leak. */
const startMemoryWatch = () => {
  let peakMb = rssMb();
  let settledMb: number | undefined;
  return {
    look(share: number) {
      const nowMb = rssMb();
      peakMb = Math.max(peakMb, nowMb);
      if (share > 0.1) settledMb ??= peakMb;
    },
    words(): string {
      const grownMb = peakMb - (settledMb ?? peakMb);
      if (grownMb > mostGrowthMb) {
        process.exitCode = 1;
        return `peak ${peakMb.toFixed(0)} MB, GROWN by ${grownMb.toFixed(0)} MB`;
      }
      return `peak ${peakMb.toFixed(0)} MB, grown by ${grownMb.toFixed(0)} MB behind the first tenth`;
    },
  };
};

const seconds = (sinceMs: number): string => `${((performance.now() - sinceMs) / 1000).toFixed(1)} s`;
const linesIn = (bytes: Uint8Array): number => bytes.reduce((count, byte) => count + (byte === lineFeed ? 1 : 0), 0);

const fuzzLines = (wanted: number, lot: (below: number) => number): void => {
  const startMs = performance.now();
  const memory = startMemoryWatch();
  const sound = soundLines();
  const most = linesIn(sound);
  const taking = startTakingLines();
  let lines = 0;
  while (lines < wanted) {
    const damaged = mutateBytes(sound, { hits: 1 + lot(most), lot });
    lines += linesIn(damaged);
    const pieceBytes = 1 + lot(20_000);
    for (let at = 0; at < damaged.length; at += pieceBytes) taking.push(damaged.subarray(at, at + pieceBytes));
    memory.look(lines / wanted);
  }
  const { frames, messages, sentences, broken } = taking.end();
  console.log(`${lines} damaged lines in ${seconds(startMs)}: ${memory.words()}`);
  console.log(`  ${frames} frames, ${messages} messages, ${sentences} sentences, ${broken} broken`);
};

const fuzzFiles = (wanted: number, lot: (below: number) => number): void => {
  const startMs = performance.now();
  const memory = startMemoryWatch();
  const files = soundFiles();
  for (let count = 0; count < wanted; count += 1) {
    const sound = files[count % files.length] ?? new Uint8Array(0);
    const damaged = mutateBytes(sound, { hits: lot(12), lot });
    takeFile(lot(3) === 0 ? damaged.subarray(0, lot(damaged.length + 1)) : damaged, 1 + lot(5000));
    memory.look(count / wanted);
  }
  console.log(`${wanted} damaged files in ${seconds(startMs)}: ${memory.words()}`);
};

/** A minute of an invented bus whose clock is put on by so much each time it is sent again. */
const startEndlessBus = (minuteS: number) => {
  const frames = recordBus({ seconds: minuteS });
  const bytes = candumpBytes(frames);
  const firstS = Number(new TextDecoder().decode(bytes.subarray(1, 11)));
  const offsets = [0];
  for (
    let feed = bytes.indexOf(lineFeed);
    feed >= 0 && feed + 1 < bytes.length;
    feed = bytes.indexOf(lineFeed, feed + 1)
  )
    offsets.push(feed + 1);
  const seconds = frames.map(({ timeUs }) => Math.floor(timeUs / 1_000_000) - firstS);
  return {
    lines: frames.length,
    bytesOf(round: number): Uint8Array {
      offsets.forEach((offset, line) => {
        let value = firstS + (seconds[line] ?? 0) + round * (minuteS + 1);
        for (let place = 10; place >= 1; place -= 1) {
          bytes[offset + place] = 48 + (value % 10);
          value = Math.floor(value / 10);
        }
      });
      return bytes;
    },
  };
};

const streamLong = (wantedBytes: number, isPacked: boolean): void => {
  const startMs = performance.now();
  const memory = startMemoryWatch();
  const bus = startEndlessBus(60);
  const survey = startSurvey();
  const reader = startRecordingReader(survey);
  let sent = 0;
  let rounds = 0;
  for (; sent < wantedBytes; rounds += 1) {
    const bytes = bus.bytesOf(rounds);
    const packed = isPacked ? gzipSync(bytes, { level: 1 }) : bytes;
    for (let at = 0; at < packed.length; at += bytesInMb) reader.push(packed.subarray(at, at + bytesInMb));
    sent += bytes.length;
    memory.look(sent / wantedBytes);
  }
  const counts = reader.end();
  const report = survey.report([counts]);
  const isWhole = counts.frames === rounds * bus.lines && counts.broken === 0 && !counts.cutShort;
  if (!isWhole) process.exitCode = 1;
  console.log(
    `${(sent / 1e9).toFixed(2)} GB of candump text${isPacked ? ', packed,' : ''} surveyed in ${seconds(startMs)}: ${memory.words()}`,
  );
  console.log(
    `  ${counts.frames} frames over ${((report.time?.durationS ?? 0) / 3600).toFixed(1)} h, ${report.senders.length} senders, ${isWhole ? 'none lost' : 'FRAMES LOST'}`,
  );
};

const lot = startLot(Number(values.seed));
fuzzLines(Number(values.lines), lot);
fuzzFiles(Number(values.files), lot);
streamLong(Number(values.gigabytes) * 1e9, false);
streamLong((Number(values.gigabytes) * 1e9) / 8, true);
