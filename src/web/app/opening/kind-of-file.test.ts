import { expect, test } from 'vitest';
import { kindOfFile } from './kind-of-file.ts';

test.each([
  ['{"format":"fairlead-boat"}', 'boat'],
  ['\uFEFF\n  {"format":"fairlead-boat"}', 'boat'],
  ['', 'boat'],
  ['(1700000000.000000) can0 09F80102#0102030405060708\n', 'recording'],
  ['\u00d4\u00c3\u00b2\u00a1', 'recording'],
])('a file that begins with %j is told from its first letters', async (text, kind) => {
  expect(await kindOfFile(new Blob([text]))).toBe(kind);
});
