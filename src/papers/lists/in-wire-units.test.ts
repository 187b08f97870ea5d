import fc from 'fast-check';
import { expect, test } from 'vitest';
import { awgConductors } from '../../core/facts/conductors.ts';
import { inWireUnits } from './in-wire-units.ts';

test.each([
  ['Its feed is 2.5 mm² (12 AWG), 4.10 m', 'Its feed is 2.5 mm², 4.10 m', 'Its feed is 12 AWG, 4.10 m'],
  ['cable, 2 × 2.5 mm² or 12 AWG', 'cable, 2 × 2.5 mm²', 'cable, 2 × 12 AWG'],
  ['35\u00A0mm² (1/0 AWG) and 70 mm² (2/0 AWG)', '35 mm² and 70 mm²', '1/0 AWG and 2/0 AWG'],
  ['a lead of 16 AWG', 'a lead of 1.31 mm²', 'a lead of 16 AWG'],
  ['the wire aboard of 3.31 mm²', 'the wire aboard of 3.31 mm²', 'the wire aboard of 12 AWG'],
  ['a feeder of 16 mm², 24 mm wide', 'a feeder of 16 mm², 24 mm wide', 'a feeder of 16 mm², 24 mm wide'],
  ['no wire at all', 'no wire at all', 'no wire at all'],
])('"%s" is said with metres and with feet', (words, withMetres, withFeet) => {
  expect(inWireUnits(words, 'metres')).toBe(withMetres);
  expect(inWireUnits(words, 'feet')).toBe(withFeet);
});

test('with both, both are said: a pair stays, a gauge and an area of one say each other', () => {
  expect(inWireUnits('2.5 mm² (12 AWG)', 'both')).toBe('2.5 mm² (12 AWG)');
  expect(inWireUnits('16 AWG', 'both')).toBe('16 AWG (1.31 mm²)');
  expect(inWireUnits('3.31 mm²', 'both')).toBe('3.31 mm² (12 AWG)');
});

test.each([
  ['14', 2.08],
  ['12', 3.31],
  ['10', 5.26],
  ['4/0', 107.22],
])('the area of %s AWG is %d mm² (ASTM B258)', (gauge, areaMm2) => {
  expect(inWireUnits(`${gauge} AWG`, 'metres')).toBe(`${areaMm2} mm²`);
});

test('every gauge of the table goes to mm² and comes back as itself', () => {
  fc.assert(
    fc.property(fc.constantFrom(...awgConductors), ({ size, areaMm2 }) => {
      const metric = inWireUnits(`${size} AWG`, 'metres');
      expect(Math.abs(Number.parseFloat(metric) - areaMm2)).toBeLessThanOrEqual(0.005 + 1e-3);
      expect(inWireUnits(metric, 'feet')).toBe(`${size} AWG`);
    }),
  );
});

test('a metric size nobody sells by gauge is never rounded to one', () => {
  fc.assert(
    fc.property(fc.constantFrom(0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120), (areaMm2) => {
      expect(inWireUnits(`${areaMm2} mm²`, 'feet')).toBe(`${areaMm2} mm²`);
    }),
  );
});
