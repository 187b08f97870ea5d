import { expect, test } from 'vitest';
import { copiedSettings } from './copied-settings.ts';
import { notedSettings } from './noted-settings.ts';
import { typicalSheets } from './sheets/index.ts';

const { byKind, closed } = notedSettings;

test('every kind of unit with settings to note is a kind that can be aboard', () => {
  const kinds = new Set([...typicalSheets.map(({ kind }) => kind), ...Object.keys(copiedSettings.byKind)]);
  expect(Object.keys(byKind).filter((kind) => !kinds.has(kind))).toEqual([]);
});

test('whatever is copied before a unit is switched off can be noted by name', () => {
  expect(Object.keys(copiedSettings.byKind).filter((kind) => byKind[kind] === undefined)).toEqual([]);
});

test('each setting of a kind stands once, and what is nobody else’s is among them', () => {
  for (const names of Object.values(byKind)) expect(new Set(names).size).toBe(names.length);
  const every = new Set(Object.values(byKind).flat());
  expect(closed.filter((name) => !every.has(name))).toEqual([]);
});
