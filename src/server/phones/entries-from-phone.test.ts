import { expect, test } from 'vitest';
import { logEntrySchema } from '../../core/log/log-entry.ts';
import { readLog } from '../../core/log/read-log.ts';
import { entriesFromPhone, mostEntriesAtOnce } from './entries-from-phone.ts';
import { phoneKinds } from './phone-kinds.ts';

const at = '2027-03-31T09:30:00Z';
const tick = (id: string, by?: string) => ({
  id,
  at,
  kind: 'tick',
  of: 'job-1',
  done: true,
  ...(by === undefined ? {} : { by }),
});
const logText = [tick('byanna0001', 'Anna'), tick('byben00001', 'Ben'), tick('bylaptop01')]
  .map((entry) => JSON.stringify(entry))
  .join('\n');
const from = (entries: unknown) => entriesFromPhone({ entries }, { name: 'Anna', logText });

test('what a phone writes is signed with its name, whatever it says itself', () => {
  expect(from([tick('entry00001'), tick('entry00002', 'The skipper')])).toMatchObject([
    { id: 'entry00001', by: 'Anna' },
    { id: 'entry00002', by: 'Anna' },
  ]);
});

test('a phone takes back what it wrote, not what others wrote', () => {
  const withdrawn = (entry: string) => [{ id: 'entry00009', at, kind: 'withdrawn', entry }];
  expect(from(withdrawn('byanna0001'))).toHaveLength(1);
  // its line has not come yet, as lines may come in any order
  expect(from(withdrawn('notcomeyet'))).toHaveLength(1);
  expect(from(withdrawn('byben00001'))).toContain('only what was written on it');
  expect(from(withdrawn('bylaptop01'))).toContain('only what was written on it');
});

test('one entry that is none holds back all of them', () => {
  expect(from([tick('entry00001'), { ...tick('entry00002'), kind: 'boat' }])).toContain('Entry 2 cannot be added');
  expect(from([tick('entry00001'), { ...tick('entry00002'), path: '/etc' }])).toContain('Entry 2 cannot be added');
  expect(from({ length: 1 })).toContain('as a list');
  expect(entriesFromPhone([], { name: 'Anna', logText })).toContain('as a list');
  expect(from(Array.from({ length: mostEntriesAtOnce + 1 }, (_, of) => tick(`entry${of}`)))).toContain('At most');
});

test('a line too long to be read back is refused, or it would be added again with each sending', () => {
  const note = (length: number) => ({
    id: 'entry00001',
    at,
    kind: 'note',
    about: Array(20).fill('x'.repeat(299)),
    text: 'y'.repeat(length),
  });
  const lineLength = (by: string): number => JSON.stringify({ ...note(1), by }).length - 1;
  const fits = 8000 - lineLength('Anna');
  expect(from([note(fits)])).toHaveLength(1);
  expect(from([note(fits + 1)])).toContain('longer than a line');
  const [entry] = from([note(fits)]);
  expect(readLog(JSON.stringify(entry)).broken).toEqual([]);
});

test('every kind that a phone may write is one, and a kind that nobody allowed is refused', () => {
  const kinds = logEntrySchema.options.map(({ shape }) => shape.kind.value);
  for (const kind of kinds) expect([kind, phoneKinds.has(kind)]).toEqual([kind, true]);
});
