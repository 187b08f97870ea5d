import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from './add-days.ts';

test('days run on over the ends of months and years (Gregorian calendar)', () => {
  expect(addDays('2027-02-20', 14)).toBe('2027-03-06');
  expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
  expect(addDays('2100-02-28', 1)).toBe('2100-03-01');
  expect(addDays('2027-12-31', 1)).toBe('2028-01-01');
  expect(addDays('2027-05-05', 0)).toBe('2027-05-05');
});

test('days are those of the calendar of the machine, any day, any number', () => {
  const start = fc.date({ min: new Date('2000-01-01'), max: new Date('2150-01-01'), noInvalidDate: true });
  fc.assert(
    fc.property(start, fc.nat(2000), (date, days) => {
      const from = date.toISOString().slice(0, 10);
      const to = new Date(Date.parse(`${from}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
      expect(addDays(from, days)).toBe(to);
    }),
  );
});
