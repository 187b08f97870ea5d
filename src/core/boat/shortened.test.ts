import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { readBoat } from './read-boat.ts';
import { shortened } from './shortened.ts';
import type { UserError } from './user-error.ts';
import { writeBoat } from './write-boat.ts';

const refusalOf = (text: string): UserError => {
  try {
    readBoat(text);
  } catch (error) {
    // reason: nothing else is thrown for a file that is refused
    return error as UserError;
  }
  throw new Error('It was read.');
};

test('a text is cut behind as many characters as may be', () => {
  expect(shortened('x'.repeat(64))).toBe('x'.repeat(64));
  expect(shortened('x'.repeat(65))).toBe(`${'x'.repeat(64)}…`);
});

test.each(['long', 'long '])('a name of any length is quoted in part, in the sentence and in the place', (word) => {
  const { says, place } = refusalOf(writeBoat(aBoat().boat).replace('{', `{"${word.repeat(4000)}": 1,`));
  expect(says.length).toBeLessThan(150);
  expect(place?.length).toBeLessThan(150);
  expect(says).toContain(`${word.repeat(17).slice(0, 64)}…`);
});
