import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { smallPng } from './small-png.ts';

const picture = readFileSync(new URL('../docs/guide/pictures/first-page.png', import.meta.url));

/** A picture of eight bits a channel of two colours, as a browser would write it, in its smallest form. */
const twoColours = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAAD0lEQVR4nGP4z8DAwPAfAAcAAf9+CLHQAAAAAElFTkSuQmCC'),
  (letter) => letter.charCodeAt(0),
);

test('pictures of the guide have a palette, so each is small', () => {
  // the kind of colour in the head of the file: 3 is a palette
  expect(picture[25]).toBe(3);
});

test('a picture is the same size with a palette, and what is no picture of a browser is turned away', () => {
  const small = smallPng(twoColours);
  expect([...small.subarray(16, 24)]).toEqual([...twoColours.subarray(16, 24)]);
  expect(small[25]).toBe(3);
  expect(() => smallPng(picture)).toThrow('no picture as a browser takes it');
});
