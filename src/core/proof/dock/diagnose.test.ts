import { describe, expect, test } from 'vitest';
import { faultSignatures } from '../../facts/dock-tests.ts';
import type { BusModel } from './bus-model.ts';
import { diagnose } from './diagnose.ts';
import { faultCases } from './fault-cases.ts';
import { nextMeasurement } from './next-measurement.ts';
import { type Random, seeded } from './random.test-helper.ts';
import { aFault, aRealBus, readAll } from './simulated-bus.test-helper.ts';

/**
 * The readings without which a fault reads right, by the published signatures: with none of them a bus is sound to anybody. They
 * are in its case whatever else is left out.
 */
const signOf: Record<string, readonly string[]> = {
  'term-1': ['data-ohm:end-1', 'lifted-ohm:end-1', 'lifted-ohm:end-2'],
  'term-0': ['data-ohm:end-1'],
  'term-3': ['data-ohm:end-1'],
  'term-drop': ['lifted-ohm:end-1', 'lifted-ohm:end-2'],
  'open-trunk': ['data-ohm:end-1', 'data-ohm:end-2', 'lifted-ohm:end-1', 'lifted-ohm:end-2'],
  'open-drop': ['devices', 'plug-ohm'],
  short: ['data-ohm:end-1'],
  'swap-data': ['errors', 'devices'],
  'data-to-supply': ['high-to-minus', 'high-to-plus', 'low-to-minus', 'low-to-plus'],
  'swap-power': ['feed-polarity'],
  'bad-negative': ['bus-volts:feed', 'bus-volts:end-1', 'bus-volts:end-2'],
  'two-feeds': ['bus-dead'],
  'shield-twice': ['shield-to-ground'],
  water: ['steady', 'high-to-plus'],
};

const cases = 10_000;
const faults = faultSignatures.map(({ id }) => id).filter((id) => id !== 'ok');

/** Nobody measures everything: three readings in five are there, and those that are the sign of the fault. */
const partOf = (random: Random, fault: string, all: ReadonlyMap<string, number>): Map<string, number> =>
  new Map([...all].filter(([key]) => random() < 0.6 || signOf[fault]?.includes(key) === true));

describe('a fault planted in a simulated bus', () => {
  test('is among the first two causes in 95 of 100 of 10,000 random cases', () => {
    const random = seeded(20_260_507);
    const missed = new Map<string, number>();
    let found = 0;
    for (let turn = 0; turn < cases; ) {
      const bus = aRealBus(random);
      // each fault three times in one bus, elsewhere and with other readings each time
      for (const fault of [...faults, ...faults, ...faults].slice(0, cases - turn)) {
        turn += 1;
        const readings = partOf(random, fault, readAll(random, bus, aFault(random, fault, bus)));
        const [first, second] = diagnose(bus.model, readings);
        if (first?.fault === fault || second?.fault === fault) found += 1;
        else {
          const taken = `${fault} taken for ${first?.fault}, ${second?.fault}`;
          missed.set(taken, (missed.get(taken) ?? 0) + 1);
        }
      }
    }
    const confusion = [...missed]
      .sort(([, one], [, other]) => other - one)
      .map(([taken, count]) => `${taken}: ${count}`);
    expect(found / cases, confusion.slice(0, 20).join('\n')).toBeGreaterThanOrEqual(0.95);
  });

  test('is the first cause in 95 of 100 cases after a few measurements, each the one that was asked for next', () => {
    const random = seeded(7);
    let found = 0;
    let measured = 0;
    const runs = 20 * faults.length;
    for (let turn = 0; turn < runs; turn += 1) {
      const fault = faults[turn % faults.length] ?? '';
      const bus = aRealBus(random);
      const all = readAll(random, bus, aFault(random, fault, bus));
      const readings = new Map([['data-ohm:end-1', all.get('data-ohm:end-1') ?? 0]]);
      for (let more = 0; more < 14; more += 1) {
        const next = nextMeasurement(diagnose(bus.model, readings), readings);
        const value = next === undefined ? undefined : all.get(next.key);
        if (next === undefined || value === undefined) break;
        readings.set(next.key, value);
        measured += 1;
      }
      if (diagnose(bus.model, readings)[0]?.fault === fault) found += 1;
    }
    expect(found / runs).toBeGreaterThanOrEqual(0.95);
    expect(measured / runs).toBeLessThan(4);
  });

  test('is not seen in a sound bus', () => {
    const random = seeded(3);
    for (let turn = 0; turn < 200; turn += 1) {
      const bus = aRealBus(random);
      const all = readAll(random, bus, aFault(random, 'ok', bus));
      expect(diagnose(bus.model, all)[0]?.fault).toBe('ok');
    }
  });
});

/** Twenty metres of light cable with eight devices, fed in the middle. */
const model: BusModel = {
  atM: [0, 5, 10, 15, 20],
  devices: [2, 1, 2, 1, 2],
  ohmPerM: 0.0919,
  lengthDoubt: 0.05,
  feedStep: 2,
  middleStep: 2,
  farStep: 4,
  lossV: 0.6,
};
const causes = (...read: [string, number][]) => diagnose(model, new Map(read));
const first = (...read: [string, number][]): string | undefined => causes(...read)[0]?.fault;

describe('the published signatures', () => {
  const sound = [
    ['data-ohm:end-1', 60],
    ['data-ohm:end-2', 60],
  ] as [string, number][];

  test('each have their cause, and every cause its cases', () => {
    expect(new Set(Object.keys(faultCases))).toEqual(new Set(faultSignatures.map(({ id }) => id)));
    for (const [id, casesOf] of Object.entries(faultCases)) expect(casesOf(model).length, id).toBeGreaterThan(0);
  });

  test('120 ohm at both ends is a terminator missing or an open wire; lifting the one and the other tells which', () => {
    const two = causes(['data-ohm:end-1', 118], ['data-ohm:end-2', 118]);
    expect(two.slice(0, 2).map(({ fault }) => fault)).toEqual(expect.arrayContaining(['term-1', 'open-trunk']));
    const next = nextMeasurement(
      two,
      new Map([
        ['data-ohm:end-1', 118],
        ['data-ohm:end-2', 118],
      ]),
    );
    expect(next?.expects.map(({ fault }) => fault)).toEqual(expect.arrayContaining(['term-1', 'open-trunk']));
    const open = 1e9;
    const both: [string, number][] = [
      ['data-ohm:end-1', 118],
      ['data-ohm:end-2', 118],
    ];
    expect(first(...both, ['lifted-ohm:end-1', 8000], ['lifted-ohm:end-2', 8000])).toBe('open-trunk');
    expect(first(...both, ['lifted-ohm:end-1', 8000], ['lifted-ohm:end-2', 118])).toBe('term-1');
    expect(first(['data-ohm:end-1', open], ['data-ohm:end-2', open])).toBe('term-0');
  });

  test('40 ohm is a third terminator; 60 that stays 60 with one lifted is one on a drop', () => {
    expect(first(['data-ohm:end-1', 40], ['data-ohm:end-2', 40])).toBe('term-3');
    expect(first(...sound, ['lifted-ohm:end-1', 60], ['lifted-ohm:end-2', 117])).toBe('term-drop');
  });

  test('next to nothing is a short, at the step the ohms lead to: 1 ohm is 5.4 m away', () => {
    const [cause] = causes(['data-ohm:end-1', 1.2], ['data-ohm:end-2', 2.9]);
    expect(cause).toMatchObject({ fault: 'short', step: 1 });
    expect(cause?.speaks).toContain('data-ohm:end-1');
  });

  test('60 ohm with the other sign of each: levels, polarity, volts, a second feed, a second earth, water', () => {
    expect(first(...sound, ['low-to-minus', 12], ['high-to-minus', 70])).toBe('data-to-supply');
    expect(first(...sound, ['feed-polarity', -12.4])).toBe('swap-power');
    expect(first(...sound, ['bus-dead', 12.2])).toBe('two-feeds');
    expect(first(...sound, ['shield-to-ground', 200_000])).toBe('shield-twice');
    expect(first(...sound, ['bus-volts:feed', 12.4], ['bus-volts:end-1', 12.2], ['bus-volts:end-2', 9.9])).toBe(
      'bad-negative',
    );
    expect(first(...sound, ['devices', 7], ['plug-ohm', 1e9])).toBe('open-drop');
    expect(first(...sound, ['devices', 5], ['errors', 900], ['high-idle:end-1', 3.8], ['low-idle:end-1', 1.2])).toBe(
      'swap-data',
    );
    expect(first(['data-ohm:end-1', 55], ['high-to-plus', 8000], ['steady', 0])).toBe('water');
    expect(first(...sound)).toBe('ok');
  });

  test('shares add up to one, and what was not read changes nothing', () => {
    const found = causes(...sound);
    expect(found.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(diagnose(model, new Map([...sound, ['no-such-test', 5]]))).toEqual(found);
  });
});
