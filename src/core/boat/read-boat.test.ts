import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { readBoat } from './read-boat.ts';
import { UserError } from './user-error.ts';

const tern = JSON.stringify(aBoat().boat, null, 2);

const refusalOf = (text: string): UserError | undefined => {
  try {
    readBoat(text);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

/** The Tern with something in its JSON changed that the types would not allow. */
const spoilt = (path: readonly (string | number)[], value: unknown): string => {
  const data: unknown = JSON.parse(tern);
  let at = data;
  for (const step of path.slice(0, -1)) at = Reflect.get(Object(at), step);
  const last = path.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(Object(at), last);
  else Reflect.set(Object(at), last, value);
  return JSON.stringify(data, null, 2);
};

test('a good boat file is read as it stands', () => {
  expect(readBoat(tern)).toEqual(aBoat().boat);
});

test('a byte order mark before a good boat file does no harm', () => {
  expect(readBoat(`\uFEFF${tern}`)).toEqual(aBoat().boat);
});

test.each([
  ['an empty file', ' \n', 'The file is empty.'],
  ['a picture', '\uFFFDPNG\r\n\u001a\n\0\0', 'This is not a text file; it may be a picture or a program.'],
  ['a web page', '<html></html>', 'a value should stand here, not "<"'],
  ['a list', '[]', 'a boat file is one object in curly brackets'],
  ['some other JSON', '{"type": "FeatureCollection"}', 'it does not say "format": "fairlead-boat"'],
  ['another format', '{"format": "other"}', 'its `format` is not "fairlead-boat"'],
  ['far too much text', ' '.repeat(16_000_001), 'a boat file is at most 16 MB'],
])('%s is refused in one sentence', (_, text, words) => {
  expect(refusalOf(text)?.says).toContain(words);
});

test('a slip in the word format is pointed at', () => {
  expect(refusalOf('{"formt": "fairlead-boat"}')?.whatToDo).toBe('Write `format` instead of `formt`.');
});

test('a file of a newer program is refused by its version before anything else in it is judged', () => {
  const refusal = refusalOf('{"format": "fairlead-boat", "version": 7, "anchors": []}');
  expect(refusal?.says).toBe('This file was made by a newer program: its version is 7, and this program knows 1.');
  expect(refusal?.place).toBe('version');
});

test.each([
  ['a version that is no number', '"1"'],
  ['a version that never was', '0'],
  ['a version between two', '1.5'],
])('%s is refused', (_, version) => {
  expect(refusalOf(tern.replace('"version": 1', `"version": ${version}`))?.place).toBe('version');
});

test.each<[string, (string | number)[], unknown, string, string]>([
  [
    'an unknown name',
    ['ways', 0, 'lenght'],
    3,
    '`lenght` is not a name known here; did you mean `length`?',
    'ways[0].lenght, line 86',
  ],
  [
    'a word that is no choice',
    ['kit', 0, 'fate'],
    'stay',
    '"stay" is not a choice for `fate`; did you mean `stays`?',
    'kit[0].fate, line 526',
  ],
  [
    'a reading that is none',
    ['needs', 0, 'reading'],
    'hedding',
    '"hedding" is not a choice for `reading`; did you mean `heading`?',
    'needs[0].reading, line 584',
  ],
  [
    'a text for a number',
    ['hull', 'lengthM'],
    '8 m',
    '`lengthM` should be a number, not "8 m".',
    'hull.lengthM, line 8',
  ],
  ['half a phase', ['kit', 0, 'phase'], 1.5, '`phase` should be a whole number, not 1.5.', 'kit[0].phase, line 534'],
  ['a boat too long', ['hull', 'lengthM'], 84, '`lengthM` is 84; it must be at most 60.', 'hull.lengthM, line 8'],
  ['a missing sheet', ['kit', 0, 'sheet'], undefined, '`sheet` is missing.', 'kit[0].sheet, line 522'],
  [
    'a null',
    ['kit', 0, 'phase'],
    null,
    '`phase` is null; what is not known is left out of the file.',
    'kit[0].phase, line 534',
  ],
  ['a name of nothing', ['name'], '', '`name` has 0 characters; it must be at least 1.', 'name, line 4'],
  [
    'one end of a way',
    ['ways', 0, 'ends'],
    ['helm'],
    '`ends` has 1 entry; it must be at least 2.',
    'ways[0].ends, line 74',
  ],
  ['an id with a capital', ['kit', 0, 'place'], 'Helm', '`place` cannot be "Helm".', 'kit[0].place, line 527'],
  [
    'three trunks in a way',
    ['ways', 0, 'trunkTimes'],
    3,
    '3 is not a choice for `trunkTimes`.',
    'ways[0].trunkTimes, line 86',
  ],
  [
    'a feed that is neither an id nor a port',
    ['supply', 'panels', 0, 'circuits', 0, 'feeds', 0],
    'Nav bus',
    '"Nav bus" is neither an id nor unit.port.',
    'supply.panels[0].circuits[0].feeds[0], line 686',
  ],
  [
    'a label in small letters',
    ['labels'],
    { 'feed:nav~main-panel': 'c07' },
    '`feed:nav~main-panel` cannot be "c07".',
    'labels["feed:nav~main-panel"], line 704',
  ],
  [
    'more doubt than length',
    ['ways', 0, 'length', 'lessM'],
    3,
    'The length less its doubt would be below nothing; make lessM smaller.',
    'ways[0].length.lessM, line 81',
  ],
])('%s is refused at its place', (_, path, value, says, place) => {
  const refusal = refusalOf(spoilt(path, value));
  expect(refusal?.place).toBe(place);
  expect(refusal?.says).toBe(says);
  expect(refusal?.more).toEqual([]);
});

test('a misspelt name is one problem, not also a missing one', () => {
  const text = tern.replace('"hull"', '"hul"');
  expect(refusalOf(text)?.says).toBe('`hul` is not a name known here; did you mean `hull`?');
  expect(refusalOf(text)?.more).toEqual([]);
});

test('of many problems the first is told in full, five more are listed and the rest counted', () => {
  const refusal = refusalOf(spoilt(['kit'], Array(8).fill({ ...aBoat().boat.kit[0], fate: 'sold' })));
  expect(refusal?.place).toContain('kit[0].fate');
  expect(refusal?.more[0]).toBe('There are 7 more problems:');
  expect(refusal?.more[1]).toBe('  kit[1].fate: "sold" is not a choice for `fate`.');
  expect(refusal?.more).toHaveLength(7);
  expect(refusal?.more.at(-1)).toBe('  and 2 more');
  expect(refusal?.text.split('\n')).toHaveLength(8);
});

test('a hundred thousand faulty entries are refused without listing them all', () => {
  const refusal = refusalOf(`{"format":"fairlead-boat","version":1,"places":[${'{},'.repeat(100_000)}{}]}`);
  expect(refusal?.more[0]).toMatch(/^There are at least \d+ more problems:$/);
});

test('whatever is put anywhere in a boat file, it is read or refused, and nothing else happens', () => {
  const entry = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom('helm', 'nav', 'radio.dc', 'house'));
  const paths: (string | number)[][] = [];
  const walk = (value: unknown, path: (string | number)[]): void => {
    paths.push(path);
    if (Array.isArray(value)) for (const [at, inner] of value.entries()) walk(inner, [...path, at]);
    else if (typeof value === 'object' && value !== null)
      for (const [key, inner] of Object.entries(value)) walk(inner, [...path, key]);
  };
  walk(aBoat().boat, []);
  fc.assert(
    fc.property(fc.constantFrom(...paths.slice(1)), entry, (path, value) => {
      refusalOf(spoilt(path, value));
    }),
    { numRuns: 150 },
  );
});
