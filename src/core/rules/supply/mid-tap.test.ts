import { expect, test } from 'vitest';
import { midTap } from './mid-tap.ts';
import { supplyFindings, withSupply } from './supply-case.test-helper.ts';

test('a panel on the whole bank passes', () => {
  expect(supplyFindings(midTap, withSupply())).toEqual([]);
});

test('a panel on a tap is a danger about it and its bank', () => {
  const tapped = withSupply((bank, panel) => {
    bank.nominalV = 24;
    panel.tapV = 12;
  });
  const [found] = supplyFindings(midTap, tapped);
  expect(found).toMatchObject({ level: 'danger', about: ['house', 'main-panel'] });
  expect(found?.says).toContain('takes 12 V from between the batteries of house, which has 24 V');
});
