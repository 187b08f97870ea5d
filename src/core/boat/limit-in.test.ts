import { expect, test } from 'vitest';
import { busLimits } from '../facts/bus-limits.ts';
import { limitIn } from './limit-in.ts';
import { limitValue } from './limit-value.ts';

const boat = { limits: { 'nmea2000-one-drop': { value: 4, reason: 'the boatyard wants it so' } } };

test('the figure of the owner stands before that of the table', () => {
  expect(limitIn(busLimits, boat, 'nmea2000-one-drop')).toBe(4);
  expect(limitIn(busLimits, {}, 'nmea2000-one-drop')).toBe(busLimits['nmea2000-one-drop'].value);
});

test('one table and all of them together say the same', () => {
  for (const id of Object.keys(busLimits) as (keyof typeof busLimits)[]) {
    expect(limitIn(busLimits, boat, id)).toBe(limitValue(boat, id));
  }
});
