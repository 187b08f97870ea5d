import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { NewerFile } from '../../core/boat/newer-file.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { saveBoat } from '../../node/files/save-boat.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { restore } from './restore.ts';

const tern = writeBoat(aBoat().boat);
const at = (hour: number) => () => new Date(Date.UTC(2026, 2, 1, hour, 30));

const terminal = async () => {
  const folder = tempFolder();
  const path = join(folder, 'tern.boat.json');
  await saveBoat({ path, text: tern, now: at(8) });
  await saveBoat({ path, text: tern.replace('"Tern"', '"Skua"'), now: at(9) });
  const printed: string[] = [];
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((text) => printed.push(String(text)) > 0);
  onTestFinished(() => spy.mockRestore());
  return { folder, path, printed };
};

test('a damaged file is put back from its newest good backup, and both are named', async () => {
  const { folder, path, printed } = await terminal();
  writeFileSync(path, '\0\0\0');
  await restore(path);
  expect(readFileSync(path, 'utf8')).toBe(tern);
  const [backup, damaged] = ['2026-03-01-09-30-00-000.json', /\.damaged\.json$/];
  expect(printed[0]).toBe(
    `${path} is back to how she was until 2026-03-01 09:30 UTC, from ${join(folder, 'tern.backups', backup)}.\n`,
  );
  const aside = readdirSync(join(folder, 'tern.backups')).find((name) => damaged.test(name)) ?? '';
  expect(printed[1]).toBe(`The damaged file is kept as ${join(folder, 'tern.backups', aside)}.\n`);
  expect(readFileSync(join(folder, 'tern.backups', aside), 'utf8')).toBe('\0\0\0');
});

test('a good file, a newer one and one without a good backup are left as they are', async () => {
  const { folder, path, printed } = await terminal();
  const good = readFileSync(path, 'utf8');
  await restore(path);
  expect(printed).toEqual([
    `${path} can be read as it is; nothing was changed. Earlier states are restored in the app.\n`,
  ]);
  const newer = good.replace('"version": 1', '"version": 2');
  writeFileSync(path, newer);
  await expect(restore(path)).rejects.toThrow(NewerFile);
  expect(readFileSync(path, 'utf8')).toBe(newer);
  const alone = join(folder, 'alone.boat.json');
  writeFileSync(alone, '{');
  await expect(restore(alone)).rejects.toThrow('and there is no backup that can be read.');
  expect(readFileSync(alone, 'utf8')).toBe('{');
});
