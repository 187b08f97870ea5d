import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { twoShipNumbers } from './two-ship-numbers.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const noted = (value: string) => ({ aboard: { settings: [{ name: 'MMSI', value }] } });
const found = (radio: string, ais: string, digits?: string) =>
  findingsOf(twoShipNumbers, {
    boat: aBoat()
      .with(ternWithAis(digits === undefined ? {} : { papers: { number: { digits, from: 'state' } } }))
      .unit('radio', noted(radio))
      .unit('ais', noted(ais)).boat,
  });

test('LG-06: a radio and an AIS with two numbers disagree, and neither is shown whole (USCG NAVCEN)', () => {
  const [finding] = found('000123456', '000 654 321');
  expect(finding).toMatchObject({ id: 'settings/two-ship-numbers:ais,radio', level: 'fault' });
  expect(finding?.says).toContain('•••••••21');
  expect(finding?.says).not.toContain('654');
});

test('a set that has not the number of her papers is named alone', () => {
  expect(found('000123456', '000654321', '000123456')).toMatchObject([{ id: 'settings/two-ship-numbers:ais' }]);
});

test('one number in all is right', () => {
  expect(found('000123456', '000-123-456')).toEqual([]);
  expect(found('000123456', '000123456', '000123456')).toEqual([]);
});
