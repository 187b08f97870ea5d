import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatFileName } from './boat-file-name.ts';

test.each([
  ['Gannet', 'gannet'],
  ['Gannet, a copy', 'gannet-a-copy'],
  ['Möwe II', 'mowe-ii'],
  ['../../etc/passwd', 'etc-passwd'],
  ['鴎', 'boat'],
  ['CON', 'boat-con'],
])('a boat called "%s" is kept under %s', (name, id) => {
  expect(boatFileName(name, new Set())).toBe(id);
});

test('a name that is taken gets the next number, capitals or not', () => {
  expect(boatFileName('Gannet', new Set(['Gannet', 'gannet-2']))).toBe('gannet-3');
});

test('whatever a boat is called, its file name is plain and free', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 80, unit: 'grapheme' }),
      fc.array(fc.constantFrom('boat', 'a')),
      (name, taken) => {
        const id = boatFileName(name, new Set(taken));
        expect(id).toMatch(/^[a-z0-9][a-z0-9-]*$/);
        expect(taken).not.toContain(id);
      },
    ),
  );
});
