import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, onTestFinished, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { sheetThread } from './sheet-thread.ts';

const { make: makeAsked, stop } = sheetThread();
const make = (text: string) => makeAsked({ text, done: [], today: '2027-04-01', hash: '', fileHash: '' });
afterAll(stop);

test('a boat is planned beside the server, which is not held up by it; what is no boat is told of', async () => {
  const sandpiper = readFileSync(join(import.meta.dirname, '../../../examples/sandpiper/sandpiper.boat.json'), 'utf8');
  const small = await make(writeBoat(aBoat().with({ name: 'Tern' }).boat));
  let beats = 0;
  const beat = setInterval(() => {
    beats += 1;
  }, 5);
  onTestFinished(() => clearInterval(beat));
  const [large, none] = await Promise.all([make(sandpiper), make('{')]);
  // planned here, the two would leave no time between them for one
  expect(beats).toBeGreaterThan(5);
  expect(JSON.parse('sheet' in small ? small.sheet : '{}')).toMatchObject({ name: 'Tern' });
  const { tests, stops, work } = JSON.parse('sheet' in large ? large.sheet : '{}');
  expect(tests.length).toBeGreaterThan(10);
  expect(stops.length).toBeGreaterThan(5);
  expect(work.days.length).toBeGreaterThan(3);
  expect(none).toMatchObject({ refusal: { status: 422 } });
});

test('with too many boats waiting one is asked to come again', async () => {
  const all = Array.from({ length: 9 }, () => make('{'));
  const answers = (await Promise.all(all)).map((told) => ('refusal' in told ? told.refusal.status : 200));
  expect(answers).toEqual([422, 422, 422, 422, 422, 422, 503, 503, 503]);
});
