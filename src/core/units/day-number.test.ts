import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from './add-days.ts';
import { dayNumber, weekdayOf } from './day-number.ts';

test('days are counted from the first of January 1970, a Thursday', () => {
  expect(dayNumber('1970-01-01')).toBe(0);
  expect(dayNumber('2000-03-01')).toBe(11_017);
  expect(weekdayOf('1970-01-01')).toBe(3);
  expect(weekdayOf('2027-03-01')).toBe(0);
});

test('the day so many days later has a number so much higher', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40_000 }), (days) => {
      expect(dayNumber(addDays('1999-12-31', days)) - dayNumber('1999-12-31')).toBe(days);
    }),
  );
});
