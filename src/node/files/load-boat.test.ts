import { mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { loadBoat } from './load-boat.ts';
import { tempFolder } from './temp-folder.test-helper.ts';

const text = writeBoat(aBoat().boat);

const refusalOf = async (path: string, stdin?: Readable): Promise<UserError | undefined> => {
  try {
    await loadBoat(path, stdin === undefined ? {} : { stdin });
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

test('a boat file is read with its text and a hash of its content', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  writeFileSync(path, text);
  const loaded = await loadBoat(path);
  expect(loaded.boat).toEqual(aBoat().boat);
  expect(loaded.text).toBe(text);
  expect(loaded.hash).toMatch(/^[0-9a-f]{64}$/);
});

test('a boat is read from the standard input, in whatever pieces it comes', async () => {
  const bytes = Buffer.from(text.replace('Tern', 'Térn'));
  const pieces = Array.from({ length: Math.ceil(bytes.length / 7) }, (_, at) => bytes.subarray(at * 7, at * 7 + 7));
  const { boat } = await loadBoat('-', { stdin: Readable.from(pieces) });
  expect(boat.name).toBe('Térn');
});

test('a file of 50 MB is refused by its size, without being read', async () => {
  const path = join(tempFolder(), 'big.boat.json');
  writeFileSync(path, '{');
  truncateSync(path, 50_000_000);
  const before = process.memoryUsage().arrayBuffers;
  expect((await refusalOf(path))?.says).toBe('The file holds 50 MB; a boat file is at most 16 MB.');
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(5_000_000);
});

test('an input without end is refused after 16 MB', async () => {
  const endless = Readable.from(
    (function* spaces() {
      for (;;) yield Buffer.alloc(1_000_000, ' ');
    })(),
  );
  expect((await refusalOf('-', endless))?.says).toContain('more than 16 MB');
});

test.each<[string, (folder: string) => string, string]>([
  ['a missing file', (folder) => join(folder, 'none.boat.json'), 'There is no such file or folder.'],
  ['a folder', (folder) => folder, 'This is a folder, not a file.'],
  [
    'a path through a file',
    (folder) => {
      writeFileSync(join(folder, 'f'), '');
      return join(folder, 'f', 'x.boat.json');
    },
    'There is no such file or folder.',
  ],
  [
    'a link in a circle',
    (folder) => {
      symlinkSync(join(folder, 'a'), join(folder, 'a'));
      return join(folder, 'a');
    },
    'The path is a link that leads back to itself.',
  ],
  [
    'a picture',
    (folder) => {
      const path = join(folder, 'p.boat.json');
      writeFileSync(path, Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]));
      return path;
    },
    'This is not a text file; it may be a picture or a program.',
  ],
])('%s is refused in one sentence with its path', async (_, make, says) => {
  const folder = tempFolder();
  mkdirSync(join(folder, 'sub'));
  const path = make(folder);
  const refusal = await refusalOf(path);
  expect(refusal?.says).toBe(says);
  expect(refusal?.place).toBe(path);
});

test('a fault in a file is told with its place and the path of the file', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  writeFileSync(path, text.replace('"grp"', '"gpr"'));
  const refusal = await refusalOf(path);
  expect(refusal?.says).toBe('"gpr" is not a choice for `material`; did you mean `grp`?');
  expect(refusal?.place).toBe(`hull.material, line 7 of ${path}`);
});

test('a file in an old alphabet is refused at its line, for saving it would lose letters', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  writeFileSync(path, Buffer.from(text.replace('"Tern"', '"Térn"'), 'latin1'));
  const refusal = await refusalOf(path);
  expect(refusal?.says).toBe('The file is not written in UTF-8: it holds a letter that cannot be read.');
  expect(refusal?.place).toBe(`line 4 of ${path}`);
});
