import { describe, expect, it } from 'vitest';
import { industrialBus } from '../facts/industrial-bus.ts';
import { solveDc } from './dc-solve.ts';

/** Volts lost in one conductor with all the current at the end of the trunk. */
const lostV = (thickness: 'thick' | 'thin', lengthM: number, amps: number): number => {
  const { ohmPerM, fixedOhm } = industrialBus.fitted[thickness];
  const answer = solveDc({
    source: 'supply',
    sourceV: 24,
    edges: [
      { id: 'inlet', from: 'supply', to: 'trunk', loopOhm: fixedOhm },
      { id: 'trunk', from: 'trunk', to: 'end', loopOhm: lengthM * ohmPerM },
    ],
    loads: [{ node: 'end', behaves: 'current', amps }],
  });
  return answer.solved ? 24 - (answer.voltsAt.get('end') ?? Number.NaN) : Number.NaN;
};

const cells = (thickness: 'thick' | 'thin'): [number, number][] => {
  const { lengthM, mostA, capA } = industrialBus[thickness];
  return lengthM.map((m, n): [number, number] => [m, mostA[n] ?? Number.NaN]).filter(([, amps]) => amps < capA);
};

// The tables print hundredths of an ampere: half of one through the longest trunk's resistance is 0.034 V.
const roundingV = 0.035;

describe('BB-23 and BB-24, current against length, one supply at the end (Omron, DeviceNet Operation Manual; Bray Series 70 DeviceNet manual, tables 4 and 5)', () => {
  it.each(cells('thick'))('%d m of thick trunk and %d A lose 4.65 V per conductor', (lengthM, amps) => {
    expect(Math.abs(lostV('thick', lengthM, amps) - industrialBus.lostVPerConductor)).toBeLessThanOrEqual(roundingV);
  });

  it.each(cells('thin'))('%d m of thin trunk and %d A lose 4.65 V per conductor', (lengthM, amps) => {
    expect(Math.abs(lostV('thin', lengthM, amps) - industrialBus.lostVPerConductor)).toBeLessThanOrEqual(roundingV);
  });

  it('below the first capped length the plug stops the current, not the volts', () => {
    expect(lostV('thick', 25, industrialBus.thick.capA)).toBeLessThan(industrialBus.lostVPerConductor);
    expect(lostV('thin', 20, industrialBus.thin.capA)).toBeLessThanOrEqual(industrialBus.lostVPerConductor + roundingV);
  });
});

describe('printed feeds that hold', () => {
  const sum = (amps: readonly number[]): number => amps.reduce((total, each) => total + each, 0);

  it.each([
    [
      'BB-26, end feed, thick 200 m (Toshiba, 2000-series DeviceNet module manual 6F8C0845)',
      200,
      [0.1, 0.15, 0.05, 0.25, 0.1],
      0.65,
    ],
    [
      'BB-27, centre feed, thick, section 1 (Rockwell Automation, DNET-UM072C-EN-P, July 2004, p 4-14)',
      100,
      [1.1, 1.25, 0.5],
      2.85,
    ],
    ['BB-28, feed off centre, left 100 m (Omron, DeviceNet Operation Manual p 95)', 100, [1.1, 1.25], 2.35],
    [
      'BB-28, feed off centre, right 140 m (Toshiba, 2000-series DeviceNet module manual 6F8C0845)',
      140,
      [0.5, 0.25, 0.25, 0.85],
      1.85,
    ],
  ])('%s', (_name, lengthM, loads, sumA) => {
    expect(sum(loads)).toBeCloseTo(sumA, 9);
    expect(lostV('thick', lengthM, sumA)).toBeLessThan(industrialBus.lostVPerConductor);
  });

  it('BB-28, the curve allows 2.14 A at 140 m; the straight line between the cells allows 2.19 A and loses too much', () => {
    expect(lostV('thick', 140, 2.14)).toBeLessThanOrEqual(industrialBus.lostVPerConductor);
    expect(lostV('thick', 140, 2.145)).toBeGreaterThan(industrialBus.lostVPerConductor);
    expect(lostV('thick', 140, 2.19)).toBeGreaterThan(industrialBus.lostVPerConductor);
  });
});

describe('BB-33, current on a drop line (Rockwell Automation, DNET-UM072C-EN-P, July 2004, p 1-16)', () => {
  const { lengthM, mostA, ampMetres, capA } = industrialBus.drop;
  it.each(lengthM.map((m, n) => [m, mostA[n]] as const).filter(([m]) => m === 3 || m === 6))(
    'at %d m is at most %d A by table and by rule',
    (m, amps) => {
      expect(Math.abs(Math.min(capA, ampMetres / m) - (amps ?? Number.NaN))).toBeLessThanOrEqual(0.03);
    },
  );
});
