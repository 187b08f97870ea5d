import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { type LiveLine, startLiveLines } from '../core/proof/live/live-lines.ts';
import { startLineReader } from '../core/proof/readers/line-reader.ts';
import { tempFolder } from '../node/files/temp-folder.test-helper.ts';
import { startRecorder } from './recorder.ts';

const nowMs = 1_700_000_000_123.456;

const linesOf = (text: string): LiveLine[] => {
  const lines: LiveLine[] = [];
  startLiveLines({ onLine: (line) => lines.push(line) }).push(Buffer.from(text, 'latin1'));
  return lines;
};

const framesIn = (path: string): number => {
  const reader = startLineReader({});
  reader.push(readFileSync(path));
  return reader.end().frames;
};

test('what comes in is kept with the time it came, and noise is not', async () => {
  const path = join(tempFolder(), 'out.log');
  const recorder = startRecorder(path);
  const lines = linesOf('can0 09F8012B#0011\n(5.000001) can0 09F8012B#22\n$SDDPT,12.3,-1.5*4E\r\n\xf3\xf3\xf3\n');
  for (const line of lines) recorder.line(line, nowMs);
  recorder.note('The adapter’s plug was pulled.', nowMs);
  await recorder.stop();
  expect(readFileSync(path, 'utf8').split('\n')).toEqual([
    '(1700000000.123456) can0 09F8012B#0011',
    '(5.000001) can0 09F8012B#22',
    '(1700000000.123456) $SDDPT,12.3,-1.5*4E',
    '# (1700000000.123456) The adapter’s plug was pulled.',
    '',
  ]);
  expect(recorder.state()).toMatchObject({ kind: 'writing', lines: 3 });
});

test('a recording goes on behind what is there, also where that ends in the middle of a line', async () => {
  const path = join(tempFolder(), 'out.log');
  writeFileSync(path, '(1.000000) can0 09F8012B#00\n(2.000000) can0 09F8');
  const recorder = startRecorder(path);
  for (const line of linesOf('can0 09F8012B#11\n')) recorder.line(line, nowMs);
  await recorder.stop();
  expect(framesIn(path)).toBe(2);
});

test.skipIf(!existsSync('/dev/full'))('a full disk is told, and nothing is thrown', async () => {
  const recorder = startRecorder('/dev/full');
  for (const line of linesOf('can0 09F8012B#11\n')) recorder.line(line, nowMs);
  await vi.waitFor(
    () => expect(recorder.state()).toMatchObject({ kind: 'stopped', says: expect.stringContaining('disk is full') }),
    2000,
  );
  await recorder.stop();
});

test('a folder that is not there is told before anything is recorded', () => {
  const path = join(tempFolder(), 'no-such-folder', 'out.log');
  expect(() => startRecorder(path)).toThrow('There is no such file or folder.');
});

test('a file that was taken away is told, for what is written to it is nowhere', async () => {
  const path = join(tempFolder(), 'out.log');
  const recorder = startRecorder(path, { lookEveryMs: 5 });
  rmSync(path);
  await vi.waitFor(
    () => expect(recorder.state()).toMatchObject({ kind: 'stopped', says: expect.stringContaining('taken away') }),
    2000,
  );
  await recorder.stop();
  expect(existsSync(path)).toBe(false);
});
