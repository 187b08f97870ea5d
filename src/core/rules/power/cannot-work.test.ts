import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { cannotWork } from './cannot-work.ts';

const found = (works: boolean) =>
  findingsOf(cannotWork, {
    plan: { supplies: [{ source: 'house', sourceV: 11.8, works, ...(works ? {} : { worst: 'display.dc' }), at: [] }] },
  });

test('a bank that cannot feed what hangs on it is a fault that names where it fails first', () => {
  expect(found(false)).toMatchObject([
    { level: 'fault', about: ['display.dc', 'house'], says: expect.stringContaining('11.80 V') },
  ]);
});

test('one that can is quiet', () => {
  expect(found(true)).toEqual([]);
});
