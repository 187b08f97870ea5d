import { expect, test } from 'vitest';
import { canonicalJson } from './canonical-json.ts';

test('RFC 8785, section 3.2.3: keys are sorted by UTF-16 code units, not by the order of writing', () => {
  const sample = {
    '\u20ac': 'Euro Sign',
    '\r': 'Carriage Return',
    '\ufb33': 'Hebrew Letter Dalet With Dagesh',
    '1': 'One',
    '\ud83d\ude00': 'Emoji: Grinning Face',
    '\u0080': 'Control',
    '\u00f6': 'Latin Small Letter O With Diaeresis',
  };
  expect(Object.values(JSON.parse(canonicalJson(sample)))).toHaveLength(7);
  expect([...canonicalJson(sample).matchAll(/:"([A-Z][a-z]+)/g)].map(([, name]) => name)).toEqual([
    'Carriage',
    'One',
    'Control',
    'Latin',
    'Euro',
    'Emoji',
    'Hebrew',
  ]);
});

test('RFC 8785, section 3.2.2: numbers and strings are written as ECMAScript writes them', () => {
  expect(canonicalJson([56, 1e30, 4.5, 2e-3, 1e-27])).toBe('[56,1e+30,4.5,0.002,1e-27]');
  expect(canonicalJson('\u20ac$\u000f\nA\'B"\\"/')).toBe('"€$\\u000f\\nA\'B\\"\\\\\\"/"');
});

test('absent fields are left out and nested lists keep their order', () => {
  expect(canonicalJson({ b: undefined, a: [{ z: 1, y: [false, true] }, 'x'] })).toBe(
    '{"a":[{"y":[false,true],"z":1},"x"]}',
  );
});
