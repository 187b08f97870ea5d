import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { JoinEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { baudDiffers } from './baud-differs.ts';

const pair: JoinEntry = {
  id: 'radio-position',
  kind: 'nmea0183',
  members: [
    { kit: 'converter', port: 'out', as: 'talk' },
    { kit: 'radio', port: 'gps-in', as: 'listen' },
  ],
  from: 'file',
  lines: [],
};

test('talker and listener at 4800 pass', () => {
  expect(findingsOf(baudDiffers, { plan: { joins: [pair] } })).toEqual([]);
});

test('a talker at 38400 into a listener fixed at 4800 is a fault on that pair', () => {
  const boat = aBoat().sheet('converter-0183', (sheet) => {
    for (const port of sheet.ports) if (port.id === 'out') port.baud = 38_400;
  }).boat;
  expect(findingsOf(baudDiffers, { boat, plan: { joins: [pair] } })).toMatchObject([
    { level: 'fault', about: ['converter.out', 'radio-position', 'radio.gps-in'] },
  ]);
});

test('a port whose sheet gives no speed counts as 4800', () => {
  const boat = aBoat().sheet('converter-0183', (sheet) => {
    for (const port of sheet.ports) delete port.baud;
  }).boat;
  expect(findingsOf(baudDiffers, { boat, plan: { joins: [pair] } })).toEqual([]);
});
