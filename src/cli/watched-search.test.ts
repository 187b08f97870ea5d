import { expect, test } from 'vitest';
import { type Interrupts, watchedSearch } from './watched-search.ts';

const says = 'Looking for the cheapest way to lay the bus.';
const found = '571.63 EUR so far; none can be under 500.00 EUR.';

const setUp = ({ isTTY = true, columns = 200 } = {}) => {
  const written: string[] = [];
  const heard = new Set<() => void>();
  let [clockMs, quits] = [0, 0];
  const interrupts: Interrupts = {
    on: (_, hear) => heard.add(hear),
    off: (_, hear) => heard.delete(hear),
  };
  return {
    written,
    heard,
    quits: () => quits,
    press: () => {
      for (const hear of heard) hear();
    },
    tools: {
      terminal: { isTTY, columns, write: (text: string) => written.push(text) },
      interrupts,
      nowMs: () => {
        clockMs += 200;
        return clockMs;
      },
      quit: () => {
        quits += 1;
      },
    },
  };
};

test('a long search says at the terminal what it has, and the line is gone in the end', async () => {
  const { tools, written, heard } = setUp();
  const answer = await watchedSearch(async ({ onProgress }) => {
    for (const more of [{}, {}, { found }]) onProgress({ says, ...more });
    return 'plan';
  }, tools);
  expect(answer).toBe('plan');
  expect(written.join('')).toBe(`${says}\r\u001B[K`);
  expect(heard.size).toBe(0);
});

test('a line stays within the width of the terminal', async () => {
  const { tools, written } = setUp({ columns: 60 });
  await watchedSearch(async ({ onProgress }) => {
    for (const _ of [1, 2]) onProgress({ says, found });
  }, tools);
  expect(written[0]).toBe(`${found} ${says}`.slice(0, 59));
});

test('nothing is said where standard error is no terminal', async () => {
  const { tools, written } = setUp({ isTTY: false });
  await watchedSearch(async ({ onProgress }) => {
    for (const _ of [1, 2, 3]) onProgress({ says });
  }, tools);
  expect(written).toEqual([]);
});

test('Ctrl-C ends the search with what is found, a second one the program', async () => {
  const { tools, written, press, quits } = setUp();
  await watchedSearch(async ({ isStopped }) => {
    expect(isStopped()).toBe(false);
    press();
    expect(isStopped()).toBe(true);
    expect(quits()).toBe(0);
    press();
  }, tools);
  expect(quits()).toBe(1);
  expect(written).toEqual(['The search was stopped; layouts are the best found until then.\n']);
});
