import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';
import { ipTooLow } from './ip-too-low.ts';

const need = ['IPX6', 'IPX7'];

test('a dry place asks nothing, and a code that is enough passes', () => {
  expect(fitFindings(ipTooLow)).toEqual([]);
  expect(fitFindings(ipTooLow, { water: { need, has: 'IPX6/IPX7', enough: true } })).toEqual([]);
});

test('a code that is too low is a fault that names both', () => {
  const [finding] = fitFindings(ipTooLow, { water: { need, has: 'IP54', enough: false } });
  expect(finding).toMatchObject({ level: 'fault', about: ['display', 'hole'] });
  expect(finding?.says).toMatch(/IP54.*IPX6 and IPX7/);
});

test('a code nobody knows is a doubt of what comes, none of what hangs there', () => {
  const comes = aBoat()
    .with({ openings: aHoledBoat().openings ?? [] })
    .unit('display', { fate: 'comes' }).boat;
  const stays = aBoat()
    .with({ openings: aHoledBoat().openings ?? [] })
    .unit('display', { fate: 'stays' }).boat;
  expect(fitFindings(ipTooLow, { water: { need } }, { boat: comes })).toMatchObject([{ level: 'doubt' }]);
  expect(fitFindings(ipTooLow, { water: { need } }, { boat: stays })).toEqual([]);
});
