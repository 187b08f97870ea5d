import { describe, expect, it } from 'vitest';
import { batteryFigures, peukertExponents } from './battery-figures.ts';
import { conduitBores, conduitFill, crimpPulls, fillVerdict, supports } from './cable-work.ts';
import { cautions } from './cautions.ts';
import { compassLimits, compassSafeDistances, earthFields, headingClearances } from './compass-figures.ts';
import { deviceLoads, displayLoads } from './device-loads.ts';
import { displayEnvelopes, glassMm } from './display-envelopes.ts';
import { dropLimits } from './drop-limits.ts';
import { dutyHours, pilotMotorPct } from './duty-hours.ts';
import { aisFields, fittingLimits } from './fitting-limits.ts';
import { ipDigits } from './ip-code.ts';
import { labour, oldBoatContingency } from './labour.ts';
import { horizons, radarBeams, radarDistances } from './radar-figures.ts';
import { segregation } from './segregation.ts';
import { typicalSheets } from './sheets/index.ts';

describe('hours of work', () => {
  it('an owner takes 39.0 to 66.3 hours for a small refit on an old boat (PW-86, practice; computed)', () => {
    const counts = new Map([
      ['survey', 1],
      ['remove-display', 2],
      ['flush-mount', 2],
      ['power-feed', 3],
      ['backbone-10', 1],
      ['commission', 1],
    ]);
    const sum = (end: 0 | 1): number =>
      labour.reduce((hours, task) => hours + task.ownerH[end] * (counts.get(task.id) ?? 0), 0);
    expect(sum(0) * (1 + oldBoatContingency.least)).toBeCloseTo(39, 6);
    expect(sum(1) * (1 + oldBoatContingency.least)).toBeCloseTo(66.3, 6);
  });

  it('an owner is never quicker than a professional', () => {
    for (const { professionalH, ownerH } of labour) {
      expect(ownerH[0]).toBeGreaterThanOrEqual(professionalH[0]);
      expect(ownerH[1]).toBeGreaterThanOrEqual(professionalH[1]);
    }
  });
});

describe('banks', () => {
  it('of an exponent have no least above their most, and an unknown one is taken as a poor lead battery', () => {
    for (const { least, most } of Object.values(peukertExponents)) expect(most).toBeGreaterThanOrEqual(least);
    expect(peukertExponents.unknown.most).toBeGreaterThan(peukertExponents.agm.most);
  });

  it('give no more than was put in, and lithium more of it than lead', () => {
    for (const { usable, coulombic, energy } of Object.values(batteryFigures)) {
      for (const share of [usable, coulombic, energy]) expect(share).toBeLessThan(1);
    }
    expect(batteryFigures.lifepo4.coulombic).toBeGreaterThan(batteryFigures.lead.coulombic);
  });
});

describe('loads', () => {
  it('a 9-inch display takes 18 W at 10 V and a 24-inch one 88 W; a dome transmits at 2.1 A', () => {
    const watts = new Map(displayLoads.map(({ inches, mostWAt10V }) => [inches, mostWAt10V]));
    expect([watts.get(9), watts.get(24)]).toEqual([18, 88]);
    expect(deviceLoads.find(({ kind }) => kind === 'solid-state radar dome 24 in, transmit')?.mostA).toBe(2.1);
  });

  it('are never less at their most than at their least', () => {
    for (const { leastA, mostA } of deviceLoads) expect(mostA).toBeGreaterThanOrEqual(leastA);
    for (const { typicalA, mostA } of displayLoads) expect(mostA[1]).toBeGreaterThanOrEqual(typicalA[1]);
  });

  it.each([
    [5, 5],
    [7, 7],
    [9, 9],
    [10, 10.1],
    [12, 12.1],
    [16, 15.6],
    [22, 21.5],
    [24, 24],
  ])('the sheet of a %i-inch display draws what displays of %f inches are printed to draw', (size, inches) => {
    const load = displayLoads.find((row) => row.inches === inches);
    const power = typicalSheets.find(({ id }) => id === `multifunction-display-${size}`)?.power?.[0];
    const typicalA = (power?.typical ?? 0) / 12;
    expect(typicalA).toBeGreaterThanOrEqual((load?.typicalA[0] ?? 0) - 1e-9);
    expect(typicalA).toBeLessThanOrEqual((load?.typicalA[1] ?? 0) + 1e-9);
    expect(power?.max).toBeLessThanOrEqual(load?.mostWAt10V ?? (load?.mostA[1] ?? 0) * 12);
  });

  it('run no longer than the day, ten hours of it under engine; an AIS at anchor runs all of it', () => {
    expect(dutyHours.find(({ kind }) => kind === 'AIS')?.anchor).toEqual([24, 24]);
    for (const { anchor = [0, 0], sailing = [0, 0], motoring = [0, 0] } of dutyHours) {
      for (const [least, most] of [anchor, sailing, motoring]) expect(most).toBeGreaterThanOrEqual(least);
      expect(Math.max(anchor[1], sailing[1])).toBeLessThanOrEqual(24);
      expect(motoring[1]).toBeLessThanOrEqual(10);
    }
    expect(pilotMotorPct.quarteringSea[0]).toBeGreaterThan(pilotMotorPct.balanced[1]);
  });
});

describe('fill of a conduit', () => {
  it('may be 53 % with one cable, 31 % with two, 40 % with more (MR-02, NEC ch. 9 table 1, second-hand)', () => {
    expect([conduitFill.oneCablePct, conduitFill.twoCablesPct, conduitFill.morePct]).toEqual([53, 31, 40]);
  });

  it('of two 10.3 mm cables in 25 mm is 33.9 %: advice only (PW-75)', () => {
    const pct = (100 * 2 * 10.3 ** 2) / 25 ** 2;
    expect(pct).toBeCloseTo(33.9, 1);
    expect(pct).toBeGreaterThan(fillVerdict.adviceTwoCablesAbovePct);
    expect(pct).toBeLessThan(fillVerdict.doubtAbovePct);
  });

  it('with seven cables is 51.8 % in a 25 mm bore, a doubt, and right in the next bore sold, 32 mm (PW-73, PW-74)', () => {
    const squares = [6.1, 6.1, 7, 8, 8, 5.5, 6.5].reduce((sum, mm) => sum + mm ** 2, 0);
    const pct = (boreMm: number): number => (100 * squares) / boreMm ** 2;
    expect(pct(25)).toBeCloseTo(51.8, 1);
    expect(conduitBores.boresMm.find((boreMm) => pct(boreMm) <= conduitFill.morePct)).toBe(32);
  });
});

describe('cable work', () => {
  it('supports in inches are the millimetres of the rules: 18, 24 and 48 in', () => {
    const every = supports.map(({ everyMm }) => everyMm);
    for (const inches of [18, 24, 48]) expect(every).toContain(Math.round(inches * 25.4));
  });

  it('a crimp on a thicker wire stands a harder pull, and the least asked is below what a maker specifies', () => {
    const pulls = crimpPulls.flatMap(({ pull }) => (pull === undefined ? [] : [pull.newtons]));
    expect(pulls).toEqual([...pulls].sort((a, b) => a - b));
    for (const { pull, least } of crimpPulls)
      if (pull !== undefined && least !== undefined) expect(least.newtons).toBeLessThan(pull.newtons);
  });
});

describe('siting', () => {
  it('a unit may turn a steering compass by 1 degree where the field is 18 µT, a standard one by 0.3 (CM-01, ISO 25862, second-hand)', () => {
    expect(compassLimits.steering.value / 18).toBeCloseTo(1, 9);
    expect(compassLimits.standard.value / 18).toBeCloseTo(0.3, 9);
  });

  it('a heading sensor keeps 2 m from the engine and 1 m from steel', () => {
    const least = new Map(headingClearances.rows.map((row): [string, number] => [row.from, row.leastM]));
    expect([least.get('main engine'), least.get('steel plates, tanks')]).toEqual([2, 1]);
  });

  it('the field taken where no cruising area is given is a careful one: weaker than at three places of four', () => {
    const stronger = earthFields.rows.filter(({ microtesla }) => microtesla > compassLimits.field.value);
    expect(stronger.length / earthFields.rows.length).toBeGreaterThan(0.75);
  });

  it('a position antenna 2.5 m from a transmitter is warned of, 4 m advised on, 5 m right (AN-11)', () => {
    const warn = fittingLimits['position-antenna-to-transmitter-warn'].value;
    const advice = fittingLimits['position-antenna-to-transmitter-advice'].value;
    expect([2.5, 4, 5].map((m) => (m < warn ? 'warn' : m < advice ? 'advice' : 'ok'))).toEqual([
      'warn',
      'advice',
      'ok',
    ]);
  });

  it('a 4 mm screw sits 10 mm from an edge (DP-13), a plate over 200 x 120 mm is 240 x 160 mm (DP-15)', () => {
    expect(4 * fittingLimits['screw-to-edge'].value).toBe(10);
    const overlap = 2 * fittingLimits['plate-overlap'].value;
    expect([200 + overlap, 120 + overlap]).toEqual([240, 160]);
  });

  it('glasses of 9 and 12.1 in are 199 x 112 and 268 x 151 mm (DP-04, DP-05, geometry), and every bezel is wider', () => {
    expect(glassMm(9).widthMm).toBeCloseTo(199.24, 0);
    expect(glassMm(9).heightMm).toBeCloseTo(112.07, 0);
    expect(Math.abs(glassMm(12.1).widthMm - 267.87)).toBeLessThan(0.2);
    expect(Math.abs(glassMm(12.1).heightMm - 150.68)).toBeLessThan(0.2);
    for (const { inches, bezelWidthMm } of displayEnvelopes.rows)
      expect(bezelWidthMm[0]).toBeGreaterThan(glassMm(inches).widthMm);
  });

  it('the sizes on typical sheets lie inside the envelope of their class', () => {
    const inside = (value: number | undefined, [least, most]: readonly [number, number]): boolean =>
      value === undefined || (value >= least && value <= most);
    for (const row of displayEnvelopes.rows) {
      const { inches, bezelWidthMm, bezelHeightMm, cutoutWidthMm, cutoutHeightMm, depthMm, plugsMm } = row;
      const sheet = typicalSheets.find(({ id }) => id === `multifunction-display-${inches}`);
      const { body, cutout } = sheet ?? {};
      const fits = [
        inside(body?.widthMm, bezelWidthMm),
        inside(body?.heightMm, bezelHeightMm),
        inside(cutout?.widthMm, cutoutWidthMm),
        inside(cutout?.heightMm, cutoutHeightMm),
        inside(body?.depthMm, depthMm),
        inside(sheet?.plugsMm, plugsMm),
      ];
      expect([inches, ...fits]).toEqual([inches, true, true, true, true, true, true]);
    }
  });

  it('a standard compass wants more distance than a steering one', () => {
    for (const { standardM, steeringM } of compassSafeDistances)
      if (standardM !== undefined && steeringM !== undefined) expect(standardM).toBeGreaterThan(steeringM);
  });

  it('a beam 20, 25 or 30 degrees high first lights the sea at 5.67, 4.51 or 3.73 heights (RD-03)', () => {
    const factor = (deg: number): number => 1 / Math.tan((deg * Math.PI) / 360);
    const beams = [radarBeams['pulse-6-to-25kw'], radarBeams.dome, radarBeams['pulse-2kw']];
    expect(beams.map(({ value }) => Math.round(factor(value) * 100) / 100)).toEqual([5.67, 4.51, 3.73]);
  });

  it('a radar’s distance grows about threefold from the laxer to the ten times stricter limit (RF-05)', () => {
    for (const { at100WPerM2, at10WPerM2 } of radarDistances.rows)
      expect(Math.abs(at10WPerM2 / at100WPerM2 - Math.sqrt(10))).toBeLessThan(0.5);
  });

  it('the visible horizon from 10 m is 6.70 nm, the radar horizon from 4 m 4.42 nm (HZ-04, HZ-05, Bowditch, second-hand)', () => {
    expect(horizons.visible.value * Math.sqrt(10 / 0.3048)).toBeCloseTo(6.7016, 3);
    expect(horizons.radar.value * Math.sqrt(4 / 0.3048)).toBeCloseTo(4.4196, 3);
  });

  it('AIS sizes fit nine and six bits (AI-07: 600 m and 70 m are cut to 511 and 63)', () => {
    expect([aisFields.bowMostM, aisFields.portMostM]).toEqual([2 ** 9 - 1, 2 ** 6 - 1]);
  });

  it('data keeps 1 m from VHF, 2 m from HF, 0.15 m from heavy DC', () => {
    const least = (other: string): number | undefined =>
      segregation.find((row) => row.one === 'data cable' && row.other.startsWith(other))?.leastM;
    expect([least('VHF'), least('HF'), least('DC above 50 A')]).toEqual([1, 2, 0.15]);
  });

  it('an IP code has seven first and ten second digits, and the last three stand alone (IEC 60529, second-hand)', () => {
    expect([Object.keys(ipDigits.first).length, Object.keys(ipDigits.second).length]).toEqual([7, 10]);
    expect(ipDigits.alone).toEqual([7, 8, 9]);
  });
});

describe('limits and cautions', () => {
  it('electronics and navigation lights may lose 3 %, other lighting 10 % (ABYC E-11, second-hand)', () => {
    const pct = new Map(dropLimits.map((row) => [row.circuit, row.pct]));
    expect([pct.get('electronics'), pct.get('navigation-lights'), pct.get('other-lighting')]).toEqual([3, 3, 10]);
  });

  it('cautions are eighteen whole texts, each with what brings it up', () => {
    expect(cautions).toHaveLength(18);
    for (const { text, showWhen } of cautions) {
      expect(text).toMatch(/^[A-Z0-9].*\.$/);
      expect(showWhen).not.toBe('');
    }
  });
});
