import { Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { type Ending, shareOut } from './share-out.ts';

/** A thread that doubles numbers, the first ones late; -1 is its end, and -2 it never answers. */
const doubling = (): Worker =>
  new Worker(
    `const { parentPort } = require('node:worker_threads');
     parentPort.on('message', (n) => {
       if (n === -1) throw new Error('its end');
       if (n !== -2) setTimeout(() => parentPort.postMessage(2 * n), n < 3 ? 20 : 0);
     });`,
    { eval: true },
  ).on('error', () => undefined);

const shared = (tasks: readonly number[], threads: number, onTold: (count: number) => void = () => undefined) => {
  const told: [task: number, ending: unknown][] = [];
  let begun = 0;
  const sharing = shareOut<number, number>({
    tasks,
    threads,
    begin: () => {
      begun += 1;
      return doubling();
    },
    onEnding: (task, ending: Ending<number>) => {
      told.push([task, ending.kind === 'answered' ? ending.answer : ending.kind]);
      onTold(told.length);
    },
    nowMs: () => performance.now(),
  });
  return { ...sharing, told, begun: () => begun };
};

test.each([1, 3])('with %d threads answers come in the order of the list, whoever is ready first', async (threads) => {
  const tasks = Array.from({ length: 40 }, (_, at) => at);
  const { done, told, begun } = shared(tasks, threads);
  await done;
  expect(told).toEqual(tasks.map((task) => [task, 2 * task]));
  expect(begun()).toBe(threads);
});

test('a thread that dies is told of, and another does the rest', async () => {
  const { done, told, begun } = shared([4, -1, 5, 6], 1);
  await done;
  expect(told).toEqual([
    [4, 8],
    [-1, 'died'],
    [5, 10],
    [6, 12],
  ]);
  expect(begun()).toBe(2);
});

test('stopped, what is in hand is finished and nothing more is begun', async () => {
  const sharing = shared([5, 6, 7, 8, 9], 1, (count) => {
    if (count === 2) sharing.stop();
  });
  await sharing.done;
  expect(sharing.told).toEqual([
    [5, 10],
    [6, 12],
  ]);
});

test('ended, what is in hand is cut off, even where it would never come to an end', async () => {
  const sharing = shared([5, -2, 7], 1, () => sharing.end());
  await sharing.done;
  expect(sharing.told[0]).toEqual([5, 10]);
  expect(sharing.told.slice(1).every(([, ending]) => ending === 'cut-off')).toBe(true);
});

test('answers are not heaped up behind one that takes long', async () => {
  const tasks = [-2, ...Array.from({ length: 100 }, (_, at) => at + 3)];
  const { done, told, end } = shared(tasks, 2);
  await new Promise((resolve) => setTimeout(resolve, 200));
  expect(told).toEqual([]);
  end();
  await done;
  // fifteen were answered behind the first before the threads waited for it
  expect(told.length).toBeLessThan(20);
});
