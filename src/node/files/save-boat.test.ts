import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { fileRefusal } from './file-refusal.ts';
import { keptStates } from './keep-backup.ts';
import { loadBoat } from './load-boat.ts';
import { saveBoat } from './save-boat.ts';
import { tempFolder } from './temp-folder.test-helper.ts';

const named = (name: string): string => writeBoat(aBoat().with({ name }).boat);

/** A clock that stands at a second of one morning. */
const at = (second: number) => () => new Date(Date.UTC(2026, 2, 1, 9, 30, second));

const refusalOf = async (save: Promise<unknown>): Promise<UserError | undefined> => {
  try {
    await save;
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

test('what is saved is what is read, and the hash is the one to save with next', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const { hash } = await saveBoat({ path, text: named('Tern') });
  const loaded = await loadBoat(path);
  expect(loaded.text).toBe(named('Tern'));
  expect(loaded.hash).toBe(hash);
  await saveBoat({ path, text: named('Skua'), readHash: hash });
  expect((await loadBoat(path)).boat.name).toBe('Skua');
});

test('a file that was changed outside is not saved over', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  const { hash } = await saveBoat({ path, text: named('Tern') });
  writeFileSync(path, named('Tern, by hand'));
  const refusal = await refusalOf(saveBoat({ path, text: named('Skua'), readHash: hash }));
  expect(refusal?.says).toContain('changed by something else since it was opened');
  expect(readFileSync(path, 'utf8')).toBe(named('Tern, by hand'));
  expect(readdirSync(folder)).toEqual(['tern.boat.json']);
});

test('a save whose answer was lost is taken for made when it is asked for again', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const { hash } = await saveBoat({ path, text: named('Tern') });
  const saved = await saveBoat({ path, text: named('Skua'), readHash: hash });
  expect(await saveBoat({ path, text: named('Skua'), readHash: hash })).toEqual(saved);
  expect(await refusalOf(saveBoat({ path, text: named('Skua'), isNew: true }))).toBeDefined();
});

test('a file that is to be new is not written where one is, nor at the same moment as another', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const saves = ['Tern', 'Skua'].map((name) => refusalOf(saveBoat({ path, text: named(name), isNew: true })));
  const refusals = await Promise.all(saves);
  expect(refusals.map((refusal) => refusal?.says)).toEqual([undefined, expect.stringContaining('already a file')]);
  expect((await loadBoat(path)).boat.name).toBe('Tern');
});

test('of two saves at once on what was read once, one is refused and none is lost unawares', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const { hash } = await saveBoat({ path, text: named('Tern') });
  const saves = ['Skua', 'Gull'].map((name) => refusalOf(saveBoat({ path, text: named(name), readHash: hash })));
  const refusals = await Promise.all(saves);
  expect(refusals.map((refusal) => refusal === undefined)).toEqual([true, false]);
  expect((await loadBoat(path)).boat.name).toBe('Skua');
});

test('what a file held before each save is kept beside it under its date', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  for (const [second, name] of ['One', 'Two', 'Three'].entries()) {
    await saveBoat({ path, text: named(name), now: at(second) });
  }
  const backups = readdirSync(join(folder, 'tern.backups')).sort();
  expect(backups).toEqual(['2026-03-01-09-30-01-000.json', '2026-03-01-09-30-02-000.json']);
  const kept = backups.map((name) => readFileSync(join(folder, 'tern.backups', name), 'utf8'));
  expect(kept).toEqual([named('One'), named('Two')]);
});

test('saving the same again writes nothing and keeps no backup', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  await saveBoat({ path, text: named('Tern') });
  const before = statSync(path).mtimeMs;
  await saveBoat({ path, text: named('Tern'), now: at(5) });
  expect(statSync(path).mtimeMs).toBe(before);
  expect(readdirSync(folder)).toEqual(['tern.boat.json']);
});

test('backups are thinned out as they age, and other files beside them are left alone', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  mkdirSync(join(folder, 'tern.backups'));
  writeFileSync(join(folder, 'tern.backups', 'mine.json'), 'mine');
  for (let second = 0; second < 24; second += 1)
    await saveBoat({ path, text: named(`Tern ${second}`), now: at(second) });
  const backups = readdirSync(join(folder, 'tern.backups')).sort();
  // the first of these two minutes, the newest ten, and what is none of ours
  expect(backups).toHaveLength(12);
  expect(backups.slice(0, 2)).toEqual(['2026-03-01-09-30-01-000.json', '2026-03-01-09-30-14-000.json']);
  expect(backups.at(-1)).toBe('mine.json');
  const states = await keptStates(path);
  expect(states.map(({ name }) => name)).toEqual(backups.slice(0, -1).toReversed());
  expect(states[0]?.untilMs).toBe(at(23)().getTime());
  expect(await keptStates(join(folder, 'other.boat.json'))).toEqual([]);
});

test('two saves in one moment keep two backups', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  for (const name of ['One', 'Two', 'Three']) await saveBoat({ path, text: named(name), now: at(0) });
  const backups = readdirSync(join(folder, 'tern.backups')).sort();
  expect(backups).toEqual(['2026-03-01-09-30-00-000.json', '2026-03-01-09-30-00-001.json']);
});

test('a clock that was set back neither loses nor disorders what is kept', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const clock = [40, 41, 10, 11, 12, 50].map((minute) => () => new Date(Date.UTC(2026, 2, 1, 9, minute)));
  for (const [turn, now] of clock.entries()) await saveBoat({ path, text: named(`Turn ${turn}`), now });
  const states = await keptStates(path);
  expect(states.map(({ path: of }) => readFileSync(of, 'utf8'))).toEqual(
    [4, 3, 2, 1, 0].map((turn) => named(`Turn ${turn}`)),
  );
});

test('states kept while the clock was years ahead leave room for those after it was put right', async () => {
  const path = join(tempFolder(), 'tern.boat.json');
  const ahead = (turn: number) => () => new Date(Date.UTC(2099, 0, 1) + turn * 1000);
  const right = (turn: number) => () => new Date(Date.UTC(2026, 2, 1) + turn * 60_000);
  for (let turn = 0; turn < 15; turn += 1) await saveBoat({ path, text: named(`Ahead ${turn}`), now: ahead(turn) });
  for (let turn = 0; turn < 25; turn += 1) await saveBoat({ path, text: named(`Right ${turn}`), now: right(turn) });
  const texts = (await keptStates(path)).map(({ path: of }) => readFileSync(of, 'utf8'));
  expect(texts.slice(0, 24)).toEqual(Array.from({ length: 24 }, (_, turn) => named(`Right ${23 - turn}`)));
});

test('what a save cut short left behind is swept after a minute, and nothing else', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  const old = join(folder, '.fairlead-1-1-tern.boat.json.tmp');
  for (const name of ['.fairlead-1-1-tern.boat.json.tmp', '.fairlead-2-1-tern.boat.json.tmp', 'notes.tmp']) {
    writeFileSync(join(folder, name), 'half');
  }
  const longAgo = new Date(Date.now() - 120_000);
  utimesSync(old, longAgo, longAgo);
  utimesSync(join(folder, 'notes.tmp'), longAgo, longAgo);
  await saveBoat({ path, text: named('Tern') });
  expect(readdirSync(folder).sort()).toEqual(['.fairlead-2-1-tern.boat.json.tmp', 'notes.tmp', 'tern.boat.json']);
});

test('a link stays a link, and a file keeps its permissions', async () => {
  const folder = tempFolder();
  const real = join(folder, 'real.boat.json');
  const link = join(folder, 'link.boat.json');
  await saveBoat({ path: real, text: named('Tern') });
  chmodSync(real, 0o640);
  symlinkSync(real, link);
  await saveBoat({ path: link, text: named('Skua') });
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(real, 'utf8')).toBe(named('Skua'));
  expect(statSync(real).mode & 0o777).toBe(0o640);
});

test('a folder that is not there is refused in a sentence', async () => {
  const path = join(tempFolder(), 'none', 'tern.boat.json');
  const refusal = await refusalOf(saveBoat({ path, text: named('Tern') }));
  expect(refusal?.says).toBe('There is no such file or folder.');
  expect(refusal?.place).toBe(path);
});

test('a save that cannot keep its backup changes nothing', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  await saveBoat({ path, text: named('Tern') });
  writeFileSync(join(folder, 'tern.backups'), 'in the way');
  expect(await refusalOf(saveBoat({ path, text: named('Skua') }))).toMatchObject({
    says: 'A file stands where a folder has to be.',
    place: join(folder, 'tern.backups'),
  });
  expect(readFileSync(path, 'utf8')).toBe(named('Tern'));
});

test.runIf(process.getuid?.() !== 0)('a folder that may only be read is refused, and the file stays', async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  await saveBoat({ path, text: named('Tern') });
  chmodSync(folder, 0o500);
  const refusal = await refusalOf(saveBoat({ path, text: named('Skua') }));
  chmodSync(folder, 0o700);
  expect(refusal?.says).toBe('This program may not use the file or its folder.');
  expect(readFileSync(path, 'utf8')).toBe(named('Tern'));
});

test.each([
  ['ENOSPC', 'The disk is full; nothing was written, and what was there is as it was.'],
  ['EFBIG', 'The file would be larger than files may be here; what was there is as it was.'],
  ['EROFS', 'The disk can only be read.'],
  ['EACCES', 'This program may not use the file or its folder.'],
  ['EIO', 'The operating system refused the file: EIO.'],
])('what the operating system calls %s is told in words', (code, says) => {
  const error = Object.assign(new Error(code), { code, syscall: 'write' });
  expect(fileRefusal(error, 'tern.boat.json')).toMatchObject({ says, place: 'tern.boat.json' });
});

test('a fault of the program is not taken for one of the disk', () => {
  const fault = new TypeError('x is not a function');
  expect(fileRefusal(fault, 'tern.boat.json')).toBe(fault);
});
