import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { deviceDrawsTooMuch } from './device-draws-too-much.ts';

const found = (len: number) => {
  const boat = aBoat().sheet('gnss-receiver', (sheet) => {
    for (const port of sheet.ports) port.len = len;
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(deviceDrawsTooMuch, { boat, plan: { joins } });
};

test('LEN 20, one ampere, passes (BB-08, several public installation handbooks: 1000 mA is LEN 20)', () => {
  expect(found(20)).toEqual([]);
});

test('LEN 21 is a fault', () => {
  expect(found(21)).toMatchObject([
    { level: 'fault', about: ['gnss.n2k'], measured: { value: 21 }, limit: { value: 20 } },
  ]);
});
