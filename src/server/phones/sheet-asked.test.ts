import { expect, test } from 'vitest';
import { sheetAsked } from './sheet-asked.ts';

const file = { text: '{}', hash: 'abc' };
const tick = (of: string, done = true): string =>
  `${JSON.stringify({ kind: 'tick', id: `entry${of.length}${of.replaceAll(/[^a-z]/g, '')}`, at: '2027-03-31T09:30:00Z', of, done })}\n`;
const now = new Date(2027, 3, 1, 12);

test('a job that is done makes another sheet, a step or a reading does not', () => {
  const before = sheetAsked(file, '', now);
  expect(before).toMatchObject({ text: '{}', done: [], today: '2027-04-01' });
  const done = sheetAsked(file, tick('job/mount-radar'), now);
  expect(done.done).toEqual([['mount-radar', '2027-03-31']]);
  expect(done.hash).not.toBe(before.hash);
  expect(sheetAsked(file, tick('job/mount-radar#drill'), now).hash).toBe(before.hash);
  expect(sheetAsked(file, tick('day/1.0:pump-lifted'), now).hash).toBe(before.hash);
});

test('another file and another day make another sheet', () => {
  const before = sheetAsked(file, '', now);
  expect(sheetAsked({ ...file, hash: 'abd' }, '', now).hash).not.toBe(before.hash);
  expect(sheetAsked(file, '', new Date(2027, 3, 2, 0, 1)).today).toBe('2027-04-02');
});
