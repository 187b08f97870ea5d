import { expect, test } from 'vitest';
import { aFullBoat } from '../../../core/boat/full-boat.test-helper.ts';
import { writeBoat } from '../../../core/boat/write-boat.ts';
import { picturesIn } from './pictures-in.ts';

test('the pictures of a boat are found in its file, each once', () => {
  const boat = aFullBoat();
  const text = writeBoat(boat);
  const underlays = boat.underlays?.map(({ picture }) => picture.hash) ?? [];
  expect(underlays.length).toBeGreaterThan(0);
  expect(picturesIn(text)).toEqual(expect.arrayContaining(underlays));
  expect(new Set(picturesIn(text)).size).toBe(picturesIn(text).length);
  expect(picturesIn(`${text}${text}`)).toEqual(picturesIn(text));
  expect(picturesIn('{}')).toEqual([]);
});
