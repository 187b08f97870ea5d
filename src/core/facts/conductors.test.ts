import { describe, expect, it } from 'vitest';
import {
  awgConductors,
  awgSizingOrder,
  conductorOfAwg,
  conductorOfMm2,
  dropConstants,
  leastSizes,
  metricConductors,
  metricFor,
  smallCores,
} from './conductors.ts';
import { copper } from './copper.ts';

const areaIn = (mils: number): number => mils * dropConstants.circularMil.value;

describe('gauges', () => {
  it.each([
    ['PW-42', '12', 2.053, 3.309, 6530, 5.211],
    ['PW-43', '3/0', 10.405, 85.029, 167_806, 0.203],
    ['PW-44', '18', 1.024, 0.823, 1624, 20.948],
  ])(
    '%s (ASTM B258, second-hand; computed): %s AWG has %f mm, %f mm², %i circular mils and %f ohm/km',
    (_id, size, mm, mm2, mils, ohm) => {
      const row = conductorOfAwg(size);
      expect(row?.diameterMm).toBeCloseTo(mm, 3);
      expect(row?.areaMm2).toBeCloseTo(mm2, 2);
      expect((row?.areaMm2 ?? 0) / dropConstants.circularMil.value / mils).toBeCloseTo(1, 3);
      expect((copper.resistivity.value * 1000) / (row?.areaMm2 ?? 0) / ohm).toBeCloseTo(1, 2);
    },
  );

  it('follow d = 0.127 mm x 92^((36-n)/39), each thicker than the one before', () => {
    for (const { size, diameterMm } of awgConductors) {
      const n = size.endsWith('/0') ? 1 - Number(size[0]) : Number(size);
      expect(diameterMm).toBeCloseTo(0.127 * 92 ** ((36 - n) / 39), 3);
    }
    const areas = awgConductors.map(({ areaMm2 }) => areaMm2);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
  });

  it('are known by both names from 1/0 on, and 3 AWG is left out of sizing for want of a least area', () => {
    expect(conductorOfAwg('00')).toBe(conductorOfAwg('2/0'));
    expect(conductorOfAwg('5')).toBeUndefined();
    expect(awgSizingOrder).toEqual(['18', '16', '14', '12', '10', '8', '6', '4', '2', '1', '1/0', '2/0', '3/0', '4/0']);
  });

  it('sold by number may fall 3 to 11 % short of their nominal area (SAE J1127, J1128, second-hand)', () => {
    for (const { areaMm2, least } of awgConductors) {
      if (least === undefined) continue;
      expect(least.areaMm2).toBeCloseTo(areaIn(least.circularMils), 2);
      expect(least.areaMm2 / areaMm2).toBeGreaterThan(0.89);
      expect(least.areaMm2 / areaMm2).toBeLessThan(0.98);
    }
  });
});

describe('metric sizes', () => {
  it.each([
    ['PW-45', '12', 4],
    ['PW-46', '8', 10],
    ['published example', '10', 6],
  ])(
    '%s (nominal AWG area, IEC 60228 series, round up): %s AWG is replaced by %i mm², never by less',
    (_id, size, areaMm2) => {
      const row = conductorOfAwg(size);
      expect(row === undefined ? undefined : metricFor(row)?.areaMm2).toBe(areaMm2);
    },
  );

  it('of data pairs resist more when tinned, and 0.25 mm² has 76 ohm/km plain (DIN VDE 0295, second-hand)', () => {
    for (const { plain, tinned } of smallCores) expect(tinned).toBeGreaterThan(plain);
    expect(smallCores.find(({ areaMm2 }) => areaMm2 === 0.25)?.plain).toBe(76);
  });

  it('tinned resist more than plain, thicker less than thinner, and all more than the ISO rule says', () => {
    for (const [n, row] of metricConductors.entries()) {
      expect(row.class5Tinned).toBeGreaterThan(row.class5Plain);
      expect(row.class5Plain).toBeGreaterThan(dropConstants.iso.value / row.areaMm2);
      expect(row.class5Tinned).toBeLessThan(metricConductors[n - 1]?.class5Tinned ?? Number.POSITIVE_INFINITY);
    }
  });
});

describe('least sizes', () => {
  it('are 16 AWG alone and 18 AWG in a sheath, at most 30 in out of it (33 CFR 183.425(d) to (f))', () => {
    const rule = (name: string) => leastSizes.find((row) => row.rule === name);
    expect(rule('single conductor')?.awg).toBe('16');
    expect(rule('conductor in a sheath')).toMatchObject({ awg: '18', outOfSheathMm: 30 * 25.4 });
  });

  it('name conductors that the tables know', () => {
    for (const { awg, areaMm2 } of leastSizes) {
      if (awg !== undefined) expect(conductorOfAwg(awg)).toBeDefined();
      if (areaMm2 !== undefined) expect(conductorOfMm2(areaMm2)).toBeDefined();
    }
  });
});
