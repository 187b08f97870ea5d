import { expect, test } from 'vitest';
import { aFullBoat } from '../../../core/boat/full-boat.test-helper.ts';
import { writeBoat } from '../../../core/boat/write-boat.ts';
import { picturesIn } from './copy-pictures.ts';

test('the pictures of a boat are found in its file, each once', () => {
  const boat = aFullBoat();
  const text = writeBoat(boat);
  expect(new Set(picturesIn(text))).toEqual(new Set(boat.underlays?.map(({ picture }) => picture.hash)));
  expect(picturesIn(`${text}${text}`)).toEqual(picturesIn(text));
  expect(picturesIn('{}')).toEqual([]);
});
