import { expect, test } from 'vitest';
import { mutateBytes, startLot } from './recordings/mutate-bytes.ts';
import { soundFiles, soundLines } from './recordings/sound-recordings.ts';
import { startTakingLines, takeFile } from './recordings/take-all.ts';

const lineFeed = 10;
const linesIn = (bytes: Uint8Array): number => bytes.reduce((count, byte) => count + (byte === lineFeed ? 1 : 0), 0);

test('200,000 damaged lines of every form are read or counted, and the last whole one is read', () => {
  const lot = startLot(20_261_126);
  const sound = soundLines();
  const taking = startTakingLines();
  let lines = 0;
  while (lines < 200_000) {
    const damaged = mutateBytes(sound, { hits: 1 + lot(linesIn(sound)), lot });
    lines += linesIn(damaged);
    const pieceBytes = 1 + lot(8000);
    for (let at = 0; at < damaged.length; at += pieceBytes) taking.push(damaged.subarray(at, at + pieceBytes));
  }
  taking.push(new TextEncoder().encode('\n(1.0) can0 09F8027F#00FC\n'));
  const { frames, messages, sentences, broken, brokenAt } = taking.end();
  expect(frames).toBeGreaterThan(50_000);
  expect(messages).toBeGreaterThan(100);
  expect(sentences).toBeGreaterThan(10_000);
  expect(broken).toBeGreaterThan(20_000);
  expect(brokenAt).toHaveLength(20);
  expect(frames + messages + sentences + broken).toBeGreaterThan(lines * 0.9);
});

test('damaged files of every form are read or refused', () => {
  const lot = startLot(7);
  for (const sound of soundFiles())
    for (let round = 0; round < 80; round += 1)
      takeFile(mutateBytes(sound, { hits: lot(12), lot }).subarray(0, 1 + lot(sound.length)), 1 + lot(700));
});

test('a file that ends at any byte is read or refused', () => {
  for (const sound of soundFiles(6))
    for (let length = 0; length <= sound.length; length += 1) takeFile(sound.subarray(0, length), 64);
});

test('a clock that jumps anywhere leaves the survey its duration', () => {
  const lot = startLot(3);
  const taking = startTakingLines();
  for (let at = 0; at < 5000; at += 1) {
    const second = lot(3) === 0 ? lot(4_000_000_000) : at;
    taking.push(new TextEncoder().encode(`(${second}.${lot(1_000_000)}) can0 09F8027F#00FC\n`));
  }
  expect(taking.end()).toMatchObject({ frames: 5000, broken: 0 });
});
