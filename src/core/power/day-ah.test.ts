import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batteryFigures } from '../facts/battery-figures.ts';
import { bankAh, rechargeAh } from './bank-ah.ts';
import { dayAh } from './day-ah.ts';
import example from './example-day.check.json' with { type: 'json' };

const rowsOf = (hours: 'day1H' | 'day2H' | 'stoppedH') =>
  example.rows.map((row) => ({ currentA: row.currentA, hours: row[hours] }));

describe('the charge a day takes', () => {
  it.each([
    ['PW-63', 'first day under way', 'day1H', 90.34],
    ['PW-64', 'second day', 'day2H', 58.18],
    ['PW-92', 'hours of both with the engines off', 'stoppedH', 18.76],
  ] as const)(
    '%s (sum of current x hours, computed): the %s of a motor cruiser takes %s: %f Ah',
    (_id, _says, hours, ah) => {
      expect(Math.abs(dayAh(rowsOf(hours)) - ah)).toBeLessThan(0.05);
    },
  );

  it('adds up, in whatever order', () => {
    const row = fc.record({
      currentA: fc.double({ min: 0, max: 30, noNaN: true }),
      hours: fc.double({ min: 0, max: 24, noNaN: true }),
    });
    const rows = fc.array(row, { maxLength: 20 });
    fc.assert(
      fc.property(rows, rows, (some, others) => {
        const all = dayAh([...some, ...others]);
        expect(all).toBeCloseTo(dayAh(some) + dayAh(others), 6);
        expect(dayAh([...others, ...some])).toBeCloseTo(all, 6);
      }),
    );
  });
});

describe('a bank', () => {
  it.each([
    ['PW-65', 9.38, 2, batteryFigures.lead.usable, 37.5],
    ['PW-67', 142, 2.5, batteryFigures.lifepo4.usable, 443.75],
  ])(
    '%s (daily x days / usable share, computed): %f Ah a day for %f days at %f want %f Ah',
    (_id, dailyAh, days, usableShare, ah) => {
      expect(Math.abs(bankAh({ dailyAh, days, usableShare }) - ah)).toBeLessThan(0.1);
    },
  );

  it('PW-66 (Ah / coulombic efficiency, computed): 18.76 Ah taken from lead want 22.1 Ah put back', () => {
    const ah = rechargeAh({ takenAh: 18.76, coulombicShare: batteryFigures.lead.coulombic });
    expect(Math.abs(ah - 22.1)).toBeLessThan(0.1);
  });

  it('carries the engine-off hours of both days twice over when it is lead of 80 Ah', () => {
    expect(bankAh({ dailyAh: dayAh(rowsOf('stoppedH')), days: 2, usableShare: 0.5 })).toBeLessThan(80);
  });
});
