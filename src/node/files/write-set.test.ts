import { spawnSync } from 'node:child_process';
import { lstatSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { UserError } from '../../core/boat/user-error.ts';
import { tempFolder } from './temp-folder.test-helper.ts';
import { writeSet } from './write-set.ts';

const refusalOf = async (writing: Promise<unknown>): Promise<UserError> => {
  const cause: unknown = await writing.catch((error: unknown) => error);
  if (cause instanceof UserError) return cause;
  throw new Error(`was not refused in words: ${String(cause)}`);
};

test('all files come into the folder, which is made with those inside it', async () => {
  const folder = join(tempFolder(), 'papers', 'today');
  await writeSet(folder, [
    ['plan.txt', 'plan'],
    ['drawings/boat.svg', 'boat'],
  ]);
  expect(readdirSync(folder, { recursive: true }).sort()).toEqual(['drawings', 'drawings/boat.svg', 'plan.txt']);
  expect(readFileSync(join(folder, 'drawings/boat.svg'), 'utf8')).toBe('boat');
});

test('where one cannot be written none is, and those from before stay', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'one.txt'), 'from before');
  mkdirSync(join(folder, 'two.txt'));
  const refusal = await refusalOf(
    writeSet(folder, [
      ['one.txt', 'new'],
      ['inside/three.txt', 'new'],
      ['two.txt', 'new'],
    ]),
  );
  expect(refusal).toMatchObject({ says: 'This is a folder, not a file.', place: join(folder, 'two.txt') });
  expect(readdirSync(folder).sort()).toEqual(['one.txt', 'two.txt']);
  expect(readFileSync(join(folder, 'one.txt'), 'utf8')).toBe('from before');
});

test('a file where a folder has to be is told with its path', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'papers'), 'in the way');
  expect(await refusalOf(writeSet(join(folder, 'papers'), [['a.txt', '']]))).toMatchObject({
    says: 'A file stands where a folder has to be.',
    place: join(folder, 'papers'),
  });
});

test('a link stays a link, and a pipe is written to', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'real.txt'), 'old');
  symlinkSync(join(folder, 'real.txt'), join(folder, 'link.txt'));
  spawnSync('bash', ['-c', `mkfifo "${join(folder, 'pipe')}"`]);
  const read = readFile(join(folder, 'pipe'), 'utf8');
  await writeSet(folder, [
    ['link.txt', 'new'],
    ['pipe', 'through'],
  ]);
  expect(lstatSync(join(folder, 'link.txt')).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(folder, 'real.txt'), 'utf8')).toBe('new');
  expect(await read).toBe('through');
  expect(lstatSync(join(folder, 'pipe')).isFIFO()).toBe(true);
});
