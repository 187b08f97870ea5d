import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pgnTableText } from './import-pgns.ts';

test('the table of messages is what the importer makes of the installed database', () => {
  const path = new URL('../src/core/facts/generated/pgns.ts', import.meta.url);
  expect(readFileSync(path, 'utf8')).toBe(pgnTableText());
});
