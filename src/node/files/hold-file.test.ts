import { spawnSync } from 'node:child_process';
import { readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { holdFile } from './hold-file.ts';
import { tempFolder } from './temp-folder.test-helper.ts';

const markIn = (folder: string): string => join(folder, '.fairlead-tern.boat.json.lock');

test('works on one file are done one after the other, and nothing stays behind', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  let inside = 0;
  let most = 0;
  const works = Array.from({ length: 6 }, () =>
    holdFile(path, async () => {
      inside += 1;
      most = Math.max(most, inside);
      await wait(3);
      inside -= 1;
    }),
  );
  await Promise.all(works);
  expect(most).toBe(1);
  expect(readdirSync(folder)).toEqual([]);
});

test('a mark that is gone by the time it was read is no mark that was left', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  let inside = 0;
  let most = 0;
  const busy = async (): Promise<void> => {
    for (let turn = 0; turn < 8; turn += 1)
      await holdFile(path, async () => {
        inside += 1;
        most = Math.max(most, inside);
        await wait(Math.random());
        inside -= 1;
      });
  };
  // marks come and go as fast as they can, so that many are looked at just as they change hands
  await Promise.all(Array.from({ length: 8 }, busy));
  expect(most).toBe(1);
});

test('work that fails holds nobody up', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  await expect(holdFile(path, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await holdFile(path, () => Promise.resolve('yes'))).toBe('yes');
});

const aDeadProgram = (): number => spawnSync(process.execPath, ['-e', '']).pid;

test.each<[string, () => string, number]>([
  ['a program that was killed', () => `${hostname()} ${aDeadProgram()}`, 0],
  ['one of our own number that was killed', () => `${hostname()} ${process.pid} 7 0-1`, 0],
  ['one that died before it wrote its name', () => '', 6_000],
  ['one of another machine, long ago', () => 'elsewhere 7', 120_000],
  ['one of another machine, by a clock that is ahead', () => 'elsewhere 7', -120_000],
])('what is left by %s is taken away', async (_, says, ageMs) => {
  const folder = tempFolder();
  writeFileSync(markIn(folder), says());
  const then = new Date(Date.now() - ageMs);
  utimesSync(markIn(folder), then, then);
  expect(await holdFile(join(folder, 'tern.boat.json'), () => Promise.resolve('done'))).toBe('done');
  expect(readdirSync(folder)).toEqual([]);
});

test('a program that is at work is waited for', async () => {
  const folder = tempFolder();
  // the very first program of the machine always runs
  writeFileSync(markIn(folder), `${hostname()} 1`);
  let isDone = false;
  const held = holdFile(join(folder, 'tern.boat.json'), async () => {
    isDone = true;
  });
  await wait(80);
  expect(isDone).toBe(false);
  writeFileSync(markIn(folder), `${hostname()} ${aDeadProgram()}`);
  await held;
  expect(isDone).toBe(true);
});
