import { expect, test } from 'vitest';
import { twoSupplies } from '../../two-supplies.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { suppliesTied } from './supplies-tied.ts';

test('a bus on an isolated supply of its own passes as long as its units are isolated', () => {
  expect(isolationFindings(suppliesTied, twoSupplies(true))).toEqual([]);
});

test('a unit that joins its own minus to that of the bus ties the two: a fault that names both', () => {
  const [finding] = isolationFindings(suppliesTied, twoSupplies(false));
  expect(finding).toMatchObject({ level: 'fault', about: ['display'] });
  expect(finding?.says).toContain('the minus of bus-supply and that of house meet');
  expect(finding?.cure).toContain('isolator');
});
