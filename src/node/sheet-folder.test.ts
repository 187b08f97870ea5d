import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { aBoat } from '../core/boat/a-boat.test-helper.ts';
import { canonicalSheet } from '../core/boat/canonical-sheet.ts';
import { writeSheet } from '../core/boat/write-sheet.ts';
import { tempFolder } from './files/temp-folder.test-helper.ts';
import { sheetFolder } from './sheet-folder.ts';

const [sheet] = aBoat().boat.sheets;
if (sheet === undefined) throw new Error('no sheet');

test('a sheet that is kept is there the next time, under an id of its own, and forgotten when asked', async () => {
  const at = join(tempFolder(), 'own-sheets');
  expect(await sheetFolder(at).list()).toEqual([]);
  const kept = await sheetFolder(at).keep(sheet);
  expect(kept.id).toBe('own-converter-to-nmea-0183');
  expect(await sheetFolder(at).list()).toEqual([canonicalSheet(kept)]);
  expect(readdirSync(at)).toEqual(['own-converter-to-nmea-0183.sheet.json']);
  expect([await sheetFolder(at).forget(kept.id), await sheetFolder(at).forget(kept.id)]).toEqual([true, false]);
  expect(await sheetFolder(at).list()).toEqual([]);
});

test('one of the same name takes the place of the one before', async () => {
  const folder = sheetFolder(tempFolder());
  await folder.keep(sheet);
  await folder.keep({ ...sheet, id: 'another', sourceNote: 'Page 3.' });
  expect((await folder.list()).map(({ sourceNote }) => sourceNote)).toEqual(['Page 3.']);
});

test('a file that cannot be read is left out and left alone, and nothing outside the folder is reached', async () => {
  const at = tempFolder();
  writeFileSync(join(at, 'bad.sheet.json'), '{"format": "something"}');
  mkdirSync(join(at, 'folder.sheet.json'));
  writeFileSync(join(at, 'notes.txt'), 'mine');
  const folder = sheetFolder(at);
  await folder.keep(sheet);
  expect(await folder.list()).toHaveLength(1);
  expect(readFileSync(join(at, 'bad.sheet.json'), 'utf8')).toBe('{"format": "something"}');
  for (const id of ['../tern', 'notes', 'folder', '']) expect(await folder.forget(id)).toBe(false);
  expect(writeSheet(sheet)).toContain('fairlead-sheet');
});
