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

/** Circular mils by the ABYC rule: K I L / E, with the round trip in feet. */
const circularMils = ({ amps, loopFt, dropV }: { amps: number; loopFt: number; dropV: number }): number =>
  (dropConstants.abycCircularMils.value * amps * loopFt) / dropV;

const areaIn = (mils: number): number => mils * dropConstants.circularMil.value;

/** Current by the ISO rule: E S / (k L), with the round trip in metres. */
const isoAmps = ({ areaMm2, loopM, dropV }: { areaMm2: number; loopM: number; dropV: number }): number =>
  (dropV * areaMm2 * 1000) / (dropConstants.iso.value * loopM);

/** R(t) = R20 (230 + t) / 250 */
const ohmAt = ({ ohmPerKm, celsius }: { ohmPerKm: number; celsius: number }): number =>
  (ohmPerKm * (dropConstants.temperatureBase.value + celsius)) / (dropConstants.temperatureBase.value + 20);

describe('gauges', () => {
  it.each([
    ['12', 2.053, 3.309, 6530, 5.211],
    ['3/0', 10.405, 85.029, 167_806, 0.203],
    ['18', 1.024, 0.823, 1624, 20.948],
  ])('%s has %f mm, %f mm², %i circular mils and %f ohm/km (PW-42 to PW-44, ASTM B258)', (size, mm, mm2, mils, ohm) => {
    const row = conductorOfAwg(size);
    expect(row?.diameterMm).toBeCloseTo(mm, 3);
    expect(row?.areaMm2).toBeCloseTo(mm2, 2);
    expect((row?.areaMm2 ?? 0) / dropConstants.circularMil.value / mils).toBeCloseTo(1, 3);
    expect((copper.resistivity.value * 1000) / (row?.areaMm2 ?? 0) / ohm).toBeCloseTo(1, 2);
  });

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

describe('the smallest gauge by drop', () => {
  it.each([
    ['PW-01', 10, 21, 0.36, 6270.8, '10', '12'],
    ['PW-02', 20, 10, 0.36, 5972.2, '10', '12'],
    ['PW-03', 10, 21, 1.2, 1881.2, '16', '16'],
    ['PW-04', 15, 60, 0.36, 26_875, '4', '4'],
    ['PW-05', 5, 170, 0.36, 25_381.9, '4', '6'],
    ['PW-06', 45, 40, 1.2, 16_125, '6', '8'],
    ['PW-07', 100, 90, 0.36, 268_750, undefined, undefined],
    ['PW-08', 25, 100, 0.72, 37_326.4, '4', '4'],
  ])(
    '%s: %i A over %i ft of loop at %f V needs %f circular mils: %s by least area, %s by nominal (ABYC E-11, second-hand)',
    (_id, amps, loopFt, dropV, mils, byLeast, byNominal) => {
      const needed = circularMils({ amps, loopFt, dropV });
      expect(Math.abs(needed - mils)).toBeLessThan(0.5);
      const sized = awgConductors.filter(({ least }) => least !== undefined);
      expect(sized.find(({ least }) => (least?.circularMils ?? 0) >= needed)?.size).toBe(byLeast);
      expect(sized.find(({ areaMm2 }) => areaMm2 >= areaIn(needed))?.size).toBe(byNominal);
    },
  );
});

describe('metric sizes', () => {
  it.each([
    ['PW-09', 10, 3, 73.17],
    ['PW-10', 2.5, 2, 27.44],
    ['PW-11', 6, 10, 13.17],
    ['PW-12', 35, 15, 51.22],
    ['PW-13', 50, 20, 54.88],
    ['PW-14', 16, 12.5, 28.1],
  ])(
    '%s: %f mm² over %f m of loop carries %f A at 0.36 V by the ISO rule (ISO 10133:2012, second-hand)',
    (_id, areaMm2, loopM, amps) => {
      expect(conductorOfMm2(areaMm2)?.areaMm2).toBe(areaMm2);
      expect(Math.abs(isoAmps({ areaMm2, loopM, dropV: 0.36 }) - amps)).toBeLessThan(0.01);
    },
  );

  it('1.5 mm² loses 0.385 V by the ISO rule and 0.482 V in real tinned cable, 1.6 A over 22 m (PW-15, PW-16)', () => {
    expect((dropConstants.iso.value * 1.6 * 22) / 1.5 / 1000).toBeCloseTo(0.3849, 3);
    expect((1.6 * 22 * (conductorOfMm2(1.5)?.class5Tinned ?? 0)) / 1000).toBeCloseTo(0.4822, 3);
  });

  it.each([
    ['PW-19', 1.5, 50, 15.344],
    ['PW-20', 2.5, 30, 8.538],
    ['PW-21', 6, 60, 3.932],
  ])('%s: %f mm² tinned class 5 has at %i °C %f ohm/km (IEC 60228, second-hand)', (_id, areaMm2, celsius, ohm) => {
    expect(ohmAt({ ohmPerKm: conductorOfMm2(areaMm2)?.class5Tinned ?? 0, celsius })).toBeCloseTo(ohm, 2);
  });

  it.each([
    ['12', 4],
    ['8', 10],
    ['10', 6],
  ])('%s AWG is replaced by %i mm², never by less (PW-45, PW-46)', (size, areaMm2) => {
    const row = conductorOfAwg(size);
    expect(row === undefined ? undefined : metricFor(row)?.areaMm2).toBe(areaMm2);
  });

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
  it('are 16 AWG alone and 18 AWG in a sheath, at most 30 in out of it (33 CFR 183.425(d) to (f); PW-41)', () => {
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
