import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drive, DriveOutput } from '../boat/drive.ts';
import type { DriveCheck, DriveCheckId } from '../drives-shape.ts';
import { leadChecks, lossChecks, outputChecks, rudderChecks, weightChecks } from './drive-checks.ts';

const drive: Drive = { type: 'linear', motorV: 12, runA: 5, peakA: 15, clutchV: 12, clutchA: 1 };
const output: DriveOutput = {
  port: 'motor',
  works: ['reversing-motor'],
  runA: 12,
  peakA: 20,
  clutch: { fitted: true, clutchA: 2 },
};
const verdictOf = (checks: readonly DriveCheck[], id: DriveCheckId) =>
  checks.find(({ check }) => check === id)?.verdict;
const matched = (more: { drive?: Partial<Drive>; output?: Partial<DriveOutput>; supplyV?: number } = {}) =>
  outputChecks({
    drive: { ...drive, ...more.drive },
    output: { ...output, ...more.output },
    supplyV: more.supplyV ?? 12,
  });

describe('a drive on an output', () => {
  test('that is made for it fits in every point', () => {
    expect(matched().map(({ verdict }) => verdict)).toEqual(matched().map(() => 'fits'));
  });

  test('of other volts does not: those of the supply, or those it can be set to', () => {
    expect(verdictOf(matched({ supplyV: 24 }), 'motor-volts')).toBe('fails');
    expect(verdictOf(matched({ supplyV: 24, output: { motorV: [24, 12] } }), 'motor-volts')).toBe('fits');
  });

  test('draws no more than it gives, running and at its peak, to the very ampere', () => {
    expect(verdictOf(matched({ drive: { peakA: 20 } }), 'peak-current')).toBe('fits');
    expect(verdictOf(matched({ drive: { peakA: 20.1 } }), 'peak-current')).toBe('fails');
    expect(verdictOf(matched({ drive: { runA: 12.1, peakA: 15 } }), 'run-current')).toBe('fails');
    const { peakA: _, ...silent } = output;
    expect(verdictOf(outputChecks({ drive, output: silent, supplyV: 12 }), 'peak-current')).toBe('unknown');
  });

  test('that turns a motor does not work valves, nor the other way round', () => {
    const valves = { type: 'constant-pump' as const };
    expect(verdictOf(matched({ drive: valves }), 'output-kind')).toBe('fails');
    expect(verdictOf(matched({ output: { works: ['solenoid-valves'] } }), 'output-kind')).toBe('fails');
    expect(verdictOf(matched({ drive: valves, output: { works: ['solenoid-valves'] } }), 'output-kind')).toBe('fits');
  });

  test('a valve is held against the current of one valve', () => {
    const valves = { drive: { type: 'constant-pump' as const, runA: 2, peakA: 4 } };
    expect(verdictOf(matched({ ...valves, output: { valveA: 3 } }), 'peak-current')).toBe('fails');
    expect(verdictOf(matched({ ...valves, output: { valveA: 4 } }), 'peak-current')).toBe('fits');
  });

  test('whose clutch finds no output, other volts or too little current does not fit', () => {
    expect(verdictOf(matched({ output: { clutch: { fitted: false } } }), 'clutch-output')).toBe('fails');
    const at24 = { clutch: { fitted: true, clutchV: [24], clutchA: 2 } };
    expect(verdictOf(matched({ output: at24 }), 'clutch-volts')).toBe('fails');
    expect(verdictOf(matched({ drive: { clutchA: 2.5 } }), 'clutch-current')).toBe('fails');
    const { clutch: _, ...silent } = output;
    expect(verdictOf(outputChecks({ drive, output: silent, supplyV: 12 }), 'clutch-output')).toBe('unknown');
  });

  test('without clutch or bypass asks for no clutch output, one with a bypass does', () => {
    const { clutchV: _v, clutchA: _a, ...bare } = drive;
    const none = { ...output, clutch: { fitted: false } };
    expect(verdictOf(outputChecks({ drive: bare, output: none, supplyV: 12 }), 'clutch-output')).toBeUndefined();
    const bypass = { ...bare, bypass: true };
    expect(verdictOf(outputChecks({ drive: bypass, output: none, supplyV: 12 }), 'clutch-output')).toBe('fails');
  });

  test('of which nothing is known is unknown in every point', () => {
    const checks = outputChecks({ drive, output: undefined, supplyV: 12 });
    expect(new Set(checks.map(({ verdict }) => verdict))).toEqual(new Set(['unknown']));
  });
});

describe('the rudder sensor', () => {
  const hears = (...kinds: ('potentiometer' | 'frequency' | 'bus')[]) => ({
    ...output,
    rudder: { hears: kinds, needed: true },
  });

  test('of a kind that the computer hears fits, of another it does not', () => {
    const potentiometer = [{ kind: 'potentiometer' as const }];
    expect(rudderChecks({ drive, output: hears('potentiometer') }, potentiometer)[0]?.verdict).toBe('fits');
    expect(rudderChecks({ drive, output: hears('frequency') }, potentiometer)[0]?.verdict).toBe('fails');
    expect(rudderChecks({ drive, output }, potentiometer)[0]?.verdict).toBe('unknown');
    expect(rudderChecks({ drive, output: hears('frequency') }, [{ kind: undefined }])[0]?.verdict).toBe('unknown');
  });

  test('that is wanted and is not there is missed; where neither says, that is not known', () => {
    expect(rudderChecks({ drive, output: hears('bus') }, [])[0]).toMatchObject({
      check: 'rudder-sensor',
      verdict: 'fails',
    });
    expect(rudderChecks({ drive, output }, [])[0]?.verdict).toBe('unknown');
    expect(rudderChecks({ drive: { ...drive, needsRudderSensor: false }, output }, [])).toEqual([]);
  });
});

test('a drive is rated for the laden boat; gear of her own steering is sized for her', () => {
  expect(weightChecks({ ...drive, boatKg: 9000 }, 9000)[0]?.verdict).toBe('fits');
  expect(weightChecks({ ...drive, boatKg: 9000 }, 9001)[0]?.verdict).toBe('fails');
  expect(weightChecks(drive, 9000)[0]?.verdict).toBe('unknown');
  expect(weightChecks({ ...drive, type: 'constant-pump' }, 9000)).toEqual([]);
});

test('without power the helm is free by itself or by a lever; without the bus only by itself', () => {
  const holds = { drive: { ...drive, whenPowerIsLost: 'holds' as const }, output };
  expect(lossChecks(holds, { isOnBus: false, levers: false })).toMatchObject([{ verdict: 'fails' }]);
  expect(lossChecks(holds, { isOnBus: false, levers: true })).toMatchObject([
    { verdict: 'fits', givenKinds: ['lever'] },
  ]);
  const onBus = { drive, output: { ...output, whenBusIsLost: 'holds' as const } };
  expect(lossChecks(onBus, { isOnBus: true, levers: true }).at(-1)).toMatchObject({
    check: 'bus-lost',
    verdict: 'fails',
  });
  expect(lossChecks({ drive, output }, { isOnBus: true, levers: true }).map(({ verdict }) => verdict)).toEqual([
    'unknown',
    'unknown',
  ]);
});

test('feed and lead together may lose their share as the drive runs, and more at its peak', () => {
  const limits = { runPct: 3, peakPct: 10 };
  expect(leadChecks({ togetherPct: 3, peakPct: 10.1 }, limits).map(({ verdict }) => verdict)).toEqual([
    'fits',
    'fails',
  ]);
  expect(leadChecks({}, limits).map(({ verdict }) => verdict)).toEqual(['unknown', 'unknown']);
  expect(leadChecks(undefined, limits)).toEqual(leadChecks({}, limits));
});

test('a stronger output never turns a fit into a miss', () => {
  const amps = fc.double({ min: 0.5, max: 60, noNaN: true });
  fc.assert(
    fc.property(amps, amps, amps, fc.double({ min: 0, max: 20, noNaN: true }), (runA, peakA, outputA, moreA) => {
      const bad = (givenA: number) =>
        matched({ drive: { runA, peakA }, output: { runA: givenA, peakA: givenA } }).filter(
          ({ verdict }) => verdict === 'fails',
        ).length;
      expect(bad(outputA + moreA)).toBeLessThanOrEqual(bad(outputA));
    }),
  );
});
