import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { edits } from '../boat/edits/index.ts';
import { plan } from '../plan.ts';

const { boat } = aBoat();

const restsIn = (of: Boat): Map<string, string | undefined> =>
  new Map(plan(of, new Map()).readings.map(({ reading, at, rests }) => [`${reading} ${at}`, rests]));

test('a reading rests on proof once a recording proved it where it leaves its source, and no other does', () => {
  const before = restsIn(boat);
  const source = plan(boat, new Map()).readings.find(({ arrives, by }) => arrives && by.length > 1);
  const [from] = source?.by ?? [];
  if (source === undefined || from === undefined) throw new Error('no reading arrives');
  const noted = edits['note-proved'].apply(boat, { proved: [{ reading: source.reading, from, on: '2027-05-05' }] });
  const after = restsIn(noted);
  expect(after.get(`${source.reading} ${source.at}`)).toBe('proved');
  for (const [key, rests] of before) if (!key.startsWith(`${source.reading} `)) expect(after.get(key)).toBe(rests);
});
