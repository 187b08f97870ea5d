import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { boatPatterns } from '../../core/starting/patterns/index.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { newBoat } from './new.ts';

let printed = '';

beforeEach(() => {
  printed = '';
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

const refusalOf = async (asked: Parameters<typeof newBoat>[0]): Promise<string> => {
  const cause: unknown = await newBoat(asked).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  return cause instanceof UserError ? cause.text : String(cause);
};

test('a boat whose length is typed in feet is written to a new file and told in both units', async () => {
  const out = join(tempFolder(), 'mine.boat.json');
  await newBoat({ pattern: 'ketch', length: '39 ft', beam: '3.9 m', name: 'Kittiwake', out });
  const boat = readBoat(readFileSync(out, 'utf8'));
  expect(boat).toMatchObject({ name: 'Kittiwake', hull: { kind: 'ketch', lengthM: 11.89, beamM: 3.9 } });
  expect(boat.ways.length).toBeGreaterThan(20);
  expect(printed).toContain('length     11.89 m (39 ft)');
  expect(printed).toContain('beam       3.90 m (12 ft 10 in)');
  expect(printed.split('\n').every((line) => line.length <= 80)).toBe(true);
});

test('a file that is there already is left as it was', async () => {
  const out = join(tempFolder(), 'mine.boat.json');
  writeFileSync(out, 'somebody’s work');
  expect(await refusalOf({ pattern: 'ketch', length: '12', out })).toContain('A file of this name is there already.');
  expect(readFileSync(out, 'utf8')).toBe('somebody’s work');
});

test('a pattern that does not exist is answered in one sentence with the list of those that do, and nothing is written', async () => {
  const out = join(tempFolder(), 'mine.boat.json');
  const text = await refusalOf({ pattern: 'galleon', length: '12', out });
  for (const { id } of boatPatterns) expect(text).toContain(id);
  expect(text.split('\n').length).toBe(1);
  expect(existsSync(out)).toBe(false);
});

test('a length that is none, or none at all, is told by the name of its option', async () => {
  const out = join(tempFolder(), 'mine.boat.json');
  expect(await refusalOf({ pattern: 'ketch', length: 'long', out })).toMatch(/^--length is given as “long”/);
  expect(await refusalOf({ pattern: 'ketch', length: '12', draft: '-2', out })).toMatch(/^--draft is given as “-2”/);
  expect(await refusalOf({ pattern: 'ketch', out })).toMatch(/^--length is missing/);
  expect(await refusalOf({ length: '12', out })).toMatch(/^--pattern is missing/);
  expect(await refusalOf({ pattern: 'ketch', length: '12' })).toMatch(/^--out is missing/);
  expect(await refusalOf({ pattern: 'ketch', length: '12', beam: '40 m', out })).toMatch(/^The beam is 40\.00 m/);
});

test('the list names every pattern once', async () => {
  await newBoat({ list: true });
  expect(printed.trimEnd().split('\n').length).toBe(boatPatterns.length);
  for (const { id, name } of boatPatterns) expect(printed).toMatch(new RegExp(`^${id} +${name}$`, 'm'));
});
