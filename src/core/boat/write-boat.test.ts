import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import type { Boat } from './boat-schema.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { readBoat } from './read-boat.ts';
import { writeBoat } from './write-boat.ts';

test('a boat that is written and read again is the same boat', () => {
  expect(readBoat(writeBoat(aFullBoat()))).toEqual(aFullBoat());
});

test('names are written in the order of the format whatever order they came in, and lists as they stand', () => {
  const boat = aFullBoat();
  // reason: the same names and values, put in from last to first
  const backwards = Object.fromEntries(Object.entries(boat).reverse()) as Boat;
  const labels = Object.fromEntries(Object.entries(boat.labels ?? {}).reverse());
  expect(writeBoat({ ...backwards, labels })).toBe(writeBoat(boat));
  const places = boat.places.toReversed();
  expect(readBoat(writeBoat({ ...boat, places })).places).toEqual(places);
});

test('the text of a boat file is laid out for people and ends with a line end', () => {
  const lines = writeBoat(aBoat().boat).split('\n');
  expect(lines.slice(0, 6)).toEqual([
    '{',
    '  "format": "fairlead-boat",',
    '  "version": 1,',
    '  "name": "Tern",',
    '  "hull": {',
    '    "kind": "sloop",',
  ]);
  expect(lines.slice(-2)).toEqual(['}', '']);
});
