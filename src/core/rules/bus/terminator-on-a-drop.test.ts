import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { terminatorOnADrop } from './terminator-on-a-drop.ts';

const withTerminator = aBoat().sheet('gnss-receiver', (sheet) => {
  sheet.terminator = true;
}).boat;
const steps = [
  { place: 'helm', tees: ['display.n2k'] },
  { place: 'locker', via: 'locker-helm', tees: ['feed'] },
  { place: 'mast-base', via: 'locker-mast', tees: [] },
];
const at = (step: number) =>
  steps.map((one, order) => (order === step ? { ...one, tees: [...one.tees, 'gnss.n2k'] } : one));

test('a unit with a terminator at an end of the trunk passes', () => {
  expect(findingsOf(terminatorOnADrop, { boat: withTerminator, bus: { walk: at(2) } })).toEqual([]);
});

test('one in the middle of the trunk is a fault (BB-07: trunk end and drop end; two, one at each end, several public installation handbooks)', () => {
  expect(findingsOf(terminatorOnADrop, { boat: withTerminator, bus: { walk: at(1) } })).toMatchObject([
    { level: 'fault', about: ['gnss.n2k', 'nav'] },
  ]);
});

test('a kept drop cable with a terminator is a fault about the cable', () => {
  const boat = aBoat().with({
    cables: [
      {
        id: 'old-drop',
        kind: 'drop',
        from: { place: 'locker' },
        to: { place: 'stern-rail' },
        serves: 'nav',
        ways: ['locker-stern'],
        length: { valueM: 5, how: 'taped' },
        diameterMm: 6,
        condition: 'good',
        fate: 'stays',
        terminator: true,
      },
    ],
  }).boat;
  expect(findingsOf(terminatorOnADrop, { boat })).toMatchObject([{ about: ['nav', 'old-drop'] }]);
});
