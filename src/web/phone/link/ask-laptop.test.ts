import { afterEach, expect, test, vi } from 'vitest';
import { askLaptop } from './ask-laptop.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

const answers = (response: () => Response): void => {
  vi.stubGlobal('fetch', async () => response());
};
const json = (status: number, body: unknown, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(body), { status, headers });

test('an answer is heard with its tag, and one that is as before too', async () => {
  answers(() => json(200, { text: 'x' }, { etag: '"abc"' }));
  expect(await askLaptop({ path: 'boats' })).toEqual({
    kind: 'heard',
    value: { json: { text: 'x' }, tag: 'abc', isAsBefore: false },
  });
  answers(() => new Response(null, { status: 304, headers: { etag: '"abc"' } }));
  expect(await askLaptop({ path: 'boats', tag: 'abc' })).toMatchObject({ kind: 'heard', value: { isAsBefore: true } });
});

test('a phone that is not paired, a refusal, and a laptop that wants time are told apart', async () => {
  answers(() => json(401, { says: 'This phone is not paired.' }));
  expect(await askLaptop({ path: 'boats' })).toEqual({ kind: 'unpaired' });
  answers(() => json(422, { says: 'Not this.', whatToDo: 'Do that.' }));
  expect(await askLaptop({ path: 'boats' })).toEqual({ kind: 'refused', says: 'Not this. Do that.' });
  answers(() => json(429, { says: 'Enough.' }, { 'retry-after': '600' }));
  expect(await askLaptop({ path: 'boats' })).toEqual({ kind: 'unheard', afterS: 600, says: 'Enough.' });
});

test('nobody, and whoever does not speak as the laptop does, is not heard', async () => {
  vi.stubGlobal('fetch', () => Promise.reject(new TypeError('no route')));
  expect(await askLaptop({ path: 'boats' })).toEqual({ kind: 'unheard' });
  for (const status of [200, 404, 511]) {
    answers(() => new Response('<h1>Welcome to the harbour wifi</h1>', { status }));
    expect(await askLaptop({ path: 'boats' })).toEqual({ kind: 'unheard' });
  }
});
