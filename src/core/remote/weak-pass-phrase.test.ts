import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weakPassPhrase } from './weak-pass-phrase.ts';

test('SC-01 (invented case, common practice): the boat’s name in small letters is a weak pass phrase', () => {
  expect(weakPassPhrase({ phrase: 'turnstone', known: ['TURNSTONE'] })).toBe('known');
  expect(weakPassPhrase({ phrase: 'S/Y Turn-Stone 2027!', known: ['TURNSTONE'] })).toBe('known');
});

test('so are figures alone, and few letters', () => {
  expect(weakPassPhrase({ phrase: '12345678901234567890', known: [] })).toBe('figures');
  expect(weakPassPhrase({ phrase: 'tide-table', known: ['Gannet'] })).toBe('short');
  expect(weakPassPhrase({ phrase: 'nine wet boots on the quay', known: ['Gannet', ''] })).toBeUndefined();
});

test('whatever is put round a known name, it stays weak', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (before, after) => {
      expect(weakPassPhrase({ phrase: `${before}Gannet${after}`, known: ['gannet'] })).toBe('known');
    }),
  );
});
