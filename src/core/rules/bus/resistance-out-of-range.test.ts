import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { resistanceOutOfRange } from './resistance-out-of-range.ts';

const found = (value: number, limitId = 'nmea2000-ohm-light') =>
  findingsOf(resistanceOutOfRange, {
    boat: aBoat().with({ limits: { [limitId]: { value, reason: 'handbook, page 12' } } }).boat,
  });

test('0.0057 ohm/m for light cable is a lost decimal, 0.057 is right (BB-19, Omron and cable data sheets give 0.053 to 0.0574)', () => {
  expect(found(0.0057)).toMatchObject([
    {
      id: 'bus/resistance-out-of-range:nmea2000-ohm-light',
      level: 'fault',
      measured: { value: 0.0057, unit: 'ohm/m' },
      limit: { value: 0.045, unit: 'ohm/m' },
    },
  ]);
  expect(found(0.057)).toEqual([]);
});

test('both ends of the range pass, and just past each does not', () => {
  expect([0.045, 0.075].flatMap((value) => found(value))).toEqual([]);
  expect(found(0.0449)).toMatchObject([{ limit: { value: 0.045 } }]);
  expect(found(0.0751)).toMatchObject([{ limit: { value: 0.075 } }]);
});

test('the figure of one grade is wrong for another, and other limits are not looked at', () => {
  expect(found(0.0142, 'nmea2000-ohm-mid')).toEqual([]);
  expect(found(0.0142)).toHaveLength(1);
  expect(found(0.0001, 'nmea2000-one-drop')).toEqual([]);
});

test('a figure in range with its decimal moved never passes', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.045, max: 0.075, noNaN: true }), (ohmPerM) => {
      expect(found(ohmPerM)).toEqual([]);
      expect(found(ohmPerM * 10)).toHaveLength(1);
      expect(found(ohmPerM / 10)).toHaveLength(1);
    }),
    { numRuns: 50 },
  );
});
