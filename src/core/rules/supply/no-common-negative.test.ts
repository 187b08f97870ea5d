import { expect, test } from 'vitest';
import { noCommonNegative } from './no-common-negative.ts';
import { converter, startBank, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const withTwo = (negativeAt?: string) =>
  withSupply((_, __, boat) => {
    boat.supply.banks.push(startBank('apart'));
    if (negativeAt !== undefined) boat.supply.negativeAt = negativeAt;
  });

test('one bank has one negative, and two that meet at a place pass', () => {
  expect(supplyFindings(noCommonNegative, withSupply())).toEqual([]);
  expect(supplyFindings(noCommonNegative, withTwo('battery-box'))).toEqual([]);
});

test('two banks of which nobody has said it are a doubt', () => {
  expect(supplyFindings(noCommonNegative, withTwo())).toMatchObject([{ level: 'doubt', about: ['engine', 'house'] }]);
});

test('a converter joins the negatives of both sides unless it is isolated', () => {
  const converted = (isolated: boolean) =>
    withSupply((_, __, boat) => {
      boat.supply.dcdc.push({ ...converter('conv'), isolated });
    });
  expect(supplyFindings(noCommonNegative, converted(true))).toEqual([]);
  expect(supplyFindings(noCommonNegative, converted(false))).toMatchObject([{ about: ['conv', 'house'] }]);
});
