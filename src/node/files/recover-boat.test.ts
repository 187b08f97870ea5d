import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { contentHash } from './content-hash.ts';
import { goodState } from './good-state.ts';
import { loadBoat } from './load-boat.ts';
import { recoverBoat } from './recover-boat.ts';
import { saveBoat } from './save-boat.ts';
import { tempFolder } from './temp-folder.test-helper.ts';

const tern = writeBoat(aBoat().boat);
const named = (name: string): string => tern.replace('"name": "Tern"', `"name": "${name}"`);
const at = (second: number) => () => new Date(Date.UTC(2026, 2, 1, 9, 30, second));

const savedThrice = async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  for (const [second, name] of ['One', 'Two', 'Three'].entries())
    await saveBoat({ path, text: named(name), now: at(second) });
  return { folder, path, backups: join(folder, 'tern.backups') };
};

const refusalOf = async (wanted: Promise<unknown>): Promise<UserError> => {
  try {
    await wanted;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
  throw new Error('It was not refused.');
};

/** Half a file, bits that flipped, a file of zeroes, the marks of a merge, other alphabets. */
const damages: [string, (good: Buffer) => Buffer | string][] = [
  ['cut short', (good) => good.subarray(0, 700)],
  ['empty', () => ''],
  ['all zeroes', (good) => Buffer.alloc(good.length)],
  ['zeroes from the middle on', (good) => Buffer.concat([good.subarray(0, 512), Buffer.alloc(512)])],
  ['bits flipped', (good) => Buffer.from(good.map((byte, index) => (index % 400 === 399 ? byte ^ 0x88 : byte)))],
  ['marks of a merge', (good) => `${good.subarray(0, 40)}\n<<<<<<< ours\n${good.subarray(40)}`],
  ['UTF-16', (good) => Buffer.from(`\uFEFF${good}`, 'utf16le')],
  ['an old alphabet', (good) => Buffer.from(good.toString().replace('Three', 'Thrée'), 'latin1')],
];

test.each(damages)(
  'a file that is %s is told with its place and its backup, set aside and put back',
  async (_, damage) => {
    const { path, backups } = await savedThrice();
    const damaged = Buffer.from(damage(readFileSync(path)));
    writeFileSync(path, damaged);
    const refusal = await refusalOf(loadBoat(path));
    expect(refusal.place).toContain(path);
    expect(refusal.more.at(-1)).toBe(
      `Or go back to how she was until 2026-03-01 09:30 UTC, by the newest backup that can be read: fairlead restore ${path}`,
    );
    const good = await goodState(path);
    expect(good?.text).toBe(named('Two'));
    const { aside, hash } = await recoverBoat({
      path,
      text: good?.text ?? '',
      readHash: contentHash(damaged),
      now: at(9),
    });
    expect(readFileSync(path, 'utf8')).toBe(named('Two'));
    expect(hash).toBe(contentHash(named('Two')));
    expect(aside).toBe(join(backups, '2026-03-01-09-30-09-000.damaged.json'));
    expect(readFileSync(aside ?? '').equals(damaged)).toBe(true);
  },
);

test('a damaged backup is passed over, and no damaged file is ever a state or thinned out', async () => {
  const { path, backups } = await savedThrice();
  writeFileSync(join(backups, '2026-03-01-09-30-02-000.json'), '{ "half": ');
  for (const second of [10, 10]) {
    writeFileSync(path, `{ ${second}`);
    await recoverBoat({ path, text: named('One'), now: at(second) });
  }
  expect((await goodState(path))?.text).toBe(named('One'));
  for (let day = 1; day < 30; day += 1)
    await saveBoat({ path, text: named(`Day ${day}`), now: () => new Date(Date.UTC(2027, 2, day)) });
  expect(readdirSync(backups).filter((name) => name.endsWith('.damaged.json'))).toEqual([
    '2026-03-01-09-30-10-000-2.damaged.json',
    '2026-03-01-09-30-10-000.damaged.json',
  ]);
});

test('a file that is gone comes back from its backup, and one that is good is left alone', async () => {
  const { path } = await savedThrice();
  expect((await refusalOf(recoverBoat({ path, text: named('One') }))).says).toBe(
    'The file can be read as it is, and has been left so.',
  );
  rmSync(path);
  expect((await refusalOf(loadBoat(path))).more).toHaveLength(1);
  expect((await recoverBoat({ path, text: named('Two') })).aside).toBeUndefined();
  expect((await loadBoat(path)).boat.name).toBe('Two');
});

test('a file that a newer program wrote is not taken for a damaged one', async () => {
  const { path } = await savedThrice();
  writeFileSync(path, named('Four').replace('"version": 1', '"version": 2'));
  expect((await refusalOf(loadBoat(path))).more).toEqual([]);
});

test('a file without backups is told of as it is', async () => {
  const folder = tempFolder();
  mkdirSync(join(folder, 'tern.backups'));
  writeFileSync(join(folder, 'tern.boat.json'), '{');
  expect((await refusalOf(loadBoat(join(folder, 'tern.boat.json')))).more).toEqual([]);
});
