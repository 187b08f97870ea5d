import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { numberNotAbroad } from './number-not-abroad.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const found = (from: 'state' | 'private-registrar', goesAbroad: boolean) =>
  findingsOf(numberNotAbroad, { boat: ternWithAis({ papers: { goesAbroad, number: { digits: '000123456', from } } }) });

test('a number of a private registrar is not for foreign ports (LG-04)', () => {
  expect(found('private-registrar', true)).toMatchObject([{ id: 'settings/number-not-abroad', level: 'fault' }]);
});

test('at home it does, and one of the state everywhere', () => {
  expect(found('private-registrar', false)).toEqual([]);
  expect(found('state', true)).toEqual([]);
});
