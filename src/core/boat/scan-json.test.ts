import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineOf } from './place-in-file.ts';
import { scanJson } from './scan-json.ts';
import { UserError } from './user-error.ts';

const refusalOf = (text: string): UserError | undefined => {
  try {
    scanJson(text);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

test.each([
  ['a value that is not a number', '{"a": NaN}', 'line 1, column 7', 'NaN is not a value'],
  ['a comma with nothing after it', '{"a": 1,\n}', 'line 2, column 1', 'comma before this has nothing after it'],
  ['a comma after the last of a list', '[1, 2, ]', 'line 1, column 8', 'comma before this has nothing after it'],
  ['a comma that is missing', '{"a": 1\n "b": 2}', 'line 2, column 2', 'a comma or "}" should stand here'],
  ['a name given twice', '{"a": 1,\n "\\u0061": 2}', 'line 2, column 2', '"a" is given twice'],
  ['a name that could harm', '{"__proto__": 1}', 'line 1, column 2', '"__proto__" is not allowed'],
  ['a name that could harm, in disguise', '{"\\u005f_proto__": 1}', 'line 1, column 2', '"__proto__" is not allowed'],
  ['a number with a unit', '{"a": 12m}', 'line 1, column 7', '"12m"'],
  ['a number with a leading nought', '[012]', 'line 1, column 2', '"012"'],
  ['a number beyond reading', '[1e999]', 'line 1, column 2', 'too large'],
  ['a text that is never closed', '["abc', 'line 1, column 6', 'ends in the middle'],
  ['a text over two lines', '["a\nb"]', 'line 1, column 4', 'over the end of its line'],
  ['a backslash before the wrong letter', '["\\q"]', 'line 1, column 3', 'backslash'],
  ['a file cut short', '{"a": [1, {"b"', 'line 1, column 15', 'ends in the middle'],
  ['something after the end', '{} x', 'line 1, column 4', 'the end of the file should stand here'],
  ['a remark', '{ // hull\n}', 'line 1, column 3', 'a name in double quotes should stand here'],
])('%s is refused with its line and column', (_, text, place, words) => {
  const refusal = refusalOf(text);
  expect(refusal?.place).toBe(place);
  expect(refusal?.says).toContain(words);
});

test('200,000 brackets inside one another are refused in one sentence', () => {
  expect(refusalOf('['.repeat(200_000))?.says).toBe('Lists and objects are nested more than 64 deep here.');
  expect(refusalOf('{"a":'.repeat(200_000))?.place).toBe('line 1, column 321');
});

test('64 brackets inside one another are still read', () => {
  expect(refusalOf(`${'['.repeat(64)}${']'.repeat(64)}`)).toBeUndefined();
  expect(refusalOf(`${'['.repeat(65)}${']'.repeat(65)}`)).toBeDefined();
});

test('the same name in two different objects is no fault', () => {
  expect(refusalOf('[{"id": 1}, {"id": 2, "in": {"id": 3}}]')).toBeUndefined();
});

test('a place in the file is found by its line, or by the line of what should hold it', () => {
  const text = '{\n "kit": [\n  {"id": "a"},\n  {"id": "b"}\n ]\n}';
  expect(lineOf(text, ['kit', 1, 'id'])).toBe(4);
  expect(lineOf(text, ['kit', 1, 'sheet'])).toBe(4);
  expect(lineOf(text, ['needs'])).toBe(1);
});

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

test('whatever JSON writes is read, and what JSON refuses is refused', () => {
  const damage = fc.tuple(
    fc.json({ maxDepth: 5 }),
    fc.nat(),
    fc.nat(3),
    fc.constantFrom('', ',', '"', '{', ']', '0', '\\', '\n', 'é'),
  );
  fc.assert(
    fc.property(damage, ([text, at, cut, put]) => {
      const from = at % (text.length + 1);
      const damaged = text.slice(0, from) + put + text.slice(from + cut);
      const refusal = refusalOf(damaged);
      if (!parses(damaged)) expect(refusal).toBeDefined();
      else if (refusal !== undefined) expect(refusal.says).toMatch(/given twice|__proto__|too large/);
    }),
  );
});
