import { appendFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { LogEntry } from '../../core/log/log-entry.ts';
import { readLog } from '../../core/log/read-log.ts';
import { addToLog, logPathOf, readLogText } from './log-file.ts';
import { tempFolder } from './temp-folder.test-helper.ts';

const tick = (number: number): LogEntry => ({
  kind: 'tick',
  id: `entry${String(number).padStart(4, '0')}`,
  at: '2027-03-31T09:30:00Z',
  of: `job-${number}`,
  done: true,
});

test('a log begins empty, and each entry is a line of it once, however often it is sent', async () => {
  const boat = join(tempFolder(), 'tern.boat.json');
  expect(await readLogText(boat)).toBe('');
  expect(await addToLog(boat, [tick(1), tick(2)])).toBe(2);
  expect(await addToLog(boat, [tick(2), tick(3), tick(3)])).toBe(1);
  expect(readLog(await readLogText(boat)).entries).toEqual([tick(1), tick(2), tick(3)]);
});

test('what many add at once is all there', async () => {
  const boat = join(tempFolder(), 'tern.boat.json');
  const added = await Promise.all(Array.from({ length: 40 }, (_none, at) => addToLog(boat, [tick(at), tick(at + 1)])));
  expect(added.reduce((sum, count) => sum + count, 0)).toBe(41);
  expect(readLog(await readLogText(boat)).entries).toHaveLength(41);
});

test('a line that was cut off by a power failure spoils no other', async () => {
  const boat = join(tempFolder(), 'tern.boat.json');
  await addToLog(boat, [tick(1)]);
  appendFileSync(logPathOf(boat), JSON.stringify(tick(2)).slice(0, 30));
  await addToLog(boat, [tick(3)]);
  const { entries, broken } = readLog(readFileSync(logPathOf(boat), 'utf8'));
  expect(entries).toEqual([tick(1), tick(3)]);
  expect(broken.map(({ line }) => line)).toEqual([2]);
});
