import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foundKinds, foundOtherwise } from './found-otherwise.ts';

test.each([
  ['place', 'locker', { unit: 'x', place: 'locker' }],
  // 3 ft 6 in = 42 in of 0.0254 m
  ['length', `3' 6"`, { line: 'x', lengthM: 1.067 }],
  ['length', '4,25', { line: 'x', lengthM: 4.25 }],
  ['route', 'a-b,b-c', { line: 'x', ways: ['a-b', 'b-c'] }],
  // AWG 10 is 5.26 mm2
  ['wire', 'AWG 10', { line: 'x', areaMm2: 5.26 }],
  ['wire', '2,5 mm²', { line: 'x', areaMm2: 2.5 }],
  ['fuse', '7,5 A', { circuit: 'x', ratingA: 7.5 }],
  ['other', ' a second grommet ', { about: 'x', is: 'a second grommet' }],
] as const)('a difference of %s is read as %s', (what, typed, is) => {
  expect(foundOtherwise({ what, about: 'x', typed })).toEqual({ what, ...is });
});

test.each([
  ['length', 'long'],
  ['wire', 'thick'],
  ['fuse', '0 A'],
  ['fuse', '10 V'],
  ['other', '  '],
] as const)('a %s of “%s” is none', (what, typed) => {
  expect(foundOtherwise({ what, about: 'x', typed })).toBeUndefined();
});

test('nothing is found of nothing', () => {
  fc.assert(
    fc.property(fc.constantFrom(...foundKinds), fc.string(), (what, typed) => {
      expect(foundOtherwise({ what, about: '', typed })).toBeUndefined();
    }),
  );
});
