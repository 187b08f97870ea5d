import { describe, expect, it } from 'vitest';
import { busLimits } from '../facts/bus-limits.ts';
import { cableGrades } from '../facts/cable-grades.ts';
import { typicalPrices } from '../facts/prices.ts';
import { gradeSchema, pricesSchema } from './boat-schema.ts';
import { limitOf } from './limit-of.ts';

describe('a limit of the bus', () => {
  it('is the published one, with its source in words, until the owner says otherwise', () => {
    expect(limitOf({}, 'nmea2000-one-drop')).toEqual({
      value: 6,
      unit: 'm',
      source: expect.stringMatching(/^published: Toshiba/),
    });
  });

  it('is the owner’s where the boat file has one, with the owner’s reason as its source', () => {
    const boat = { limits: { 'nmea2000-devices': { value: 40, reason: 'older units aboard' } } };
    expect(limitOf(boat, 'nmea2000-devices')).toEqual({
      value: 40,
      unit: 'devices',
      source: 'set by the owner: older units aboard',
    });
    expect(limitOf(boat, 'nmea2000-all-drops').value).toBe(78);
  });

  it('is not taken from what every object carries by birth', () => {
    const odd = Object.create({ 'nmea2000-devices': { value: 1, reason: 'inherited' } });
    expect(limitOf({ limits: odd }, 'nmea2000-devices').value).toBe(50);
  });
});

describe('the cable grades in facts', () => {
  it('are the grades of the boat file', () => {
    expect(Object.keys(cableGrades)).toEqual(gradeSchema.options);
    expect(Object.keys(typicalPrices.byGrade)).toEqual(gradeSchema.options);
  });

  it('never warn later than they fail', () => {
    for (const grade of gradeSchema.options) {
      const warnM = busLimits[`nmea2000-trunk-${grade}-warn`].value;
      expect(warnM).toBeLessThanOrEqual(busLimits[`nmea2000-trunk-${grade}-fail`].value);
    }
  });

  it('have prices that a boat file would take', () => {
    const { source: _source, ...prices } = typicalPrices;
    expect(pricesSchema.parse(prices)).toEqual(prices);
  });
});
