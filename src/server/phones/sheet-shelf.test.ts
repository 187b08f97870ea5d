import { expect, test } from 'vitest';
import { says } from '../answer.ts';
import { type MakeSheet, sheetShelf } from './sheet-shelf.ts';

const started = (mostWaitMs = 20) => {
  let nowMs = 0;
  const asked: string[] = [];
  const waiting: ((sheet: Awaited<ReturnType<MakeSheet>>) => void)[] = [];
  const make: MakeSheet = ({ text }) => {
    asked.push(text);
    return new Promise((done) => waiting.push(done));
  };
  const shelf = sheetShelf(make, { nowMs: () => nowMs, mostWaitMs });
  return {
    asked,
    waiting,
    sheetOf: (text: string, boat = 'tern', today = '2027-04-01') =>
      shelf.sheetOf(boat, { text, hash: `${today} ${text}`, fileHash: text, done: [], today }),
    pass: (ms: number) => {
      nowMs += ms;
    },
  };
};

test('a boat is planned once for each state of its file, however many ask at once', async () => {
  const { asked, waiting, sheetOf, pass } = started(5000);
  const answers = Promise.all(Array.from({ length: 20 }, () => sheetOf('a')));
  waiting[0]?.({ sheet: 'A' });
  for (const answer of await answers) expect(answer).toMatchObject({ status: 200, text: 'A' });
  pass(60_000);
  expect(await sheetOf('a')).toMatchObject({ text: 'A' });
  expect(asked).toEqual(['a']);
});

test('where a plan takes long the one before is given, and where there is none one is asked to come again', async () => {
  const { waiting, sheetOf, pass } = started();
  expect(await sheetOf('a')).toMatchObject({ status: 503, retryAfterS: 2 });
  waiting[0]?.({ sheet: 'A' });
  expect(await sheetOf('a')).toMatchObject({ text: 'A' });
  pass(5000);
  expect(await sheetOf('b')).toMatchObject({ text: 'A' });
  waiting[1]?.({ sheet: 'B' });
  expect(await sheetOf('b')).toMatchObject({ text: 'B' });
});

test('a file that changes all the time is planned every five seconds at most, and its last state in the end', async () => {
  const { asked, waiting, sheetOf, pass } = started(5000);
  const first = sheetOf('0');
  waiting[0]?.({ sheet: '0' });
  await first;
  for (let change = 1; change <= 20; change += 1) {
    pass(1000);
    const answer = sheetOf(String(change));
    waiting[asked.length - 1]?.({ sheet: asked.at(-1) ?? '' });
    await answer;
  }
  expect(asked).toEqual(['0', '5', '10', '15', '20']);
});

test('what is done, or a new day, makes the sheet anew a minute later', async () => {
  const { asked, waiting, sheetOf, pass } = started(5000);
  const first = sheetOf('a');
  waiting[0]?.({ sheet: 'A' });
  await first;
  pass(59_999);
  expect(await sheetOf('a', 'tern', '2027-04-02')).toMatchObject({ text: 'A' });
  pass(1);
  const second = sheetOf('a', 'tern', '2027-04-02');
  waiting[1]?.({ sheet: 'A, a day on' });
  expect(await second).toMatchObject({ text: 'A, a day on' });
  expect(asked).toHaveLength(2);
});

test('what was refused for want of time is tried again later; a file that cannot be read is not, until it is another', async () => {
  const { asked, waiting, sheetOf, pass } = started(5000);
  const first = sheetOf('a');
  waiting[0]?.({ refusal: { ...says(503, 'Too long.'), retryAfterS: 60 } });
  expect(await first).toMatchObject({ status: 503 });
  pass(5000);
  const second = sheetOf('a');
  waiting[1]?.({ refusal: says(422, 'It cannot be read.') });
  expect(await second).toMatchObject({ status: 422 });
  pass(5000);
  expect(await sheetOf('a')).toMatchObject({ status: 422 });
  expect(asked).toEqual(['a', 'a']);
});

test('of many boats the sheets of a few are kept', async () => {
  const { asked, waiting, sheetOf } = started(5000);
  for (let boat = 0; boat < 8; boat += 1) {
    const answer = sheetOf('a', `boat ${boat}`);
    waiting[boat]?.({ sheet: String(boat) });
    await answer;
  }
  void sheetOf('a', 'boat 7');
  expect(asked).toHaveLength(8);
  void sheetOf('a', 'boat 0');
  expect(asked).toHaveLength(9);
});
