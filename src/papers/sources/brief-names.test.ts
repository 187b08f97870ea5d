import { expect, test } from 'vitest';
import { briefNames } from './brief-names.ts';

const brief = (...names: string[]): string[] =>
  [...briefNames(new Map(names.map((name, at) => [`${at}`, { name }]))).values()].map(({ name }) => name);

test('a name is cut at the first comma after which no other unit is called the same', () => {
  expect(brief('display, 12 V, flybridge', 'radio, old')).toEqual(['display', 'radio']);
  expect(brief('fuel sender, port, 180 ohm', 'fuel sender, starboard, 180 ohm')).toEqual([
    'fuel sender, port',
    'fuel sender, starboard',
  ]);
});

test('two units of one name keep all of it, and so does one whose whole name begins another’s', () => {
  expect(brief('pump, old', 'pump, old')).toEqual(['pump, old', 'pump, old']);
  expect(brief('head', 'head, aft')).toEqual(['head', 'head, aft']);
});
