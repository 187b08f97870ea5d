import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { sameGenderMeets } from './same-gender-meets.ts';

const found = (gender: 'male' | 'female' | 'none', fate: 'stays' | 'goes' = 'stays') => {
  const boat = aBoat().with({
    cables: [
      {
        id: 'old-drop',
        kind: 'drop',
        from: { place: 'locker' },
        to: { place: 'stern-rail', at: 'gnss.bus', gender },
        ways: ['locker-stern'],
        length: { valueM: 5, how: 'taped' },
        diameterMm: 6,
        condition: 'good',
        fate,
      },
    ],
  }).boat;
  return findingsOf(sameGenderMeets, { boat });
};

test('a female cable end on a male plug passes, and so do bare wires', () => {
  expect(found('female')).toEqual([]);
  expect(found('none')).toEqual([]);
});

test('male on male is a fault about cable and plug; a cable that goes does not matter', () => {
  expect(found('male')).toMatchObject([{ level: 'fault', about: ['gnss', 'old-drop'] }]);
  expect(found('male', 'goes')).toEqual([]);
});
