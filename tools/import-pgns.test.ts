import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fieldTableText } from './import-fields.ts';
import { pgnTableText } from './import-pgns.ts';

const generated = (name: string): string =>
  readFileSync(new URL(`../src/core/facts/generated/${name}`, import.meta.url), 'utf8');

test('the table of messages is what the importer makes of the installed database', () => {
  expect(generated('pgns.ts')).toBe(pgnTableText());
});

test('so is the table of their fields', () => {
  expect(generated('message-fields.ts')).toBe(fieldTableText());
});
