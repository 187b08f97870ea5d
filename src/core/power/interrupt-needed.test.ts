import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bankShortCircuitA } from './bank-short-circuit.ts';
import { breaksEnough, interruptNeeded } from './interrupt-needed.ts';

const bank = { position: 'main', cca: 650, capacityAh: 200, lithium: false } as const;

describe('the fault current protection must break', () => {
  it.each([
    ['PW-55', 650, 'main', 1500],
    ['PW-56', 651, 'branch', 1500],
    ['PW-57', 1800, 'main', 5000],
    ['PW-58', 1100, 'branch', 1500],
  ] as const)('%s (ABYC E-11 table V-A, second-hand): %i CCA, %s: %i A', (_id, cca, position, amps) => {
    expect(interruptNeeded({ ...bank, cca, position })).toEqual({ amps, by: 'table' });
  });

  it('is what a large bank states, 20 kA where that is above 10 kA, and unknown where it states nothing', () => {
    const large = { ...bank, cca: 2400 };
    expect(interruptNeeded({ ...large, statedA: 8000 })).toEqual({ amps: 8000, by: 'stated' });
    expect(interruptNeeded({ ...large, statedA: 10_001 })).toEqual({ amps: 20_000, by: 'stated' });
    expect(interruptNeeded({ ...large, statedA: 25_000 })).toEqual({ amps: 25_000, by: 'stated' });
    expect(interruptNeeded({ ...large, statedA: 3000 })).toEqual({ amps: 5000, by: 'table' });
    expect(interruptNeeded(large)).toEqual({ amps: 5000, by: 'unknown' });
    expect(interruptNeeded({ ...bank, capacityAh: 501 })).toEqual({ amps: 1500, by: 'unknown' });
    expect(interruptNeeded({ ...bank, capacityAh: 500, cca: 2200 }).by).toBe('table');
    expect(interruptNeeded({ ...bank, cca: 2201 }).by).toBe('unknown');
  });

  it('is 20 kA at the main of a lithium bank, which takes class T', () => {
    const { amps } = interruptNeeded({ ...bank, lithium: true });
    expect(amps).toBe(20_000);
    expect(breaksEnough({ family: 'class-t', neededA: amps })).toBe('yes');
    expect(breaksEnough({ family: 'anl', neededA: amps })).toBe('no');
  });

  it('is too much for a blade at any main, and for a blade branch above 650 CCA; of a glass tube nobody has printed it', () => {
    const main = interruptNeeded({ ...bank, cca: 0 }).amps;
    expect(breaksEnough({ family: 'blade', neededA: main })).toBe('no');
    const branch = (cca: number) => interruptNeeded({ ...bank, cca, position: 'branch' }).amps;
    expect(breaksEnough({ family: 'blade', neededA: branch(650) })).toBe('yes');
    expect(breaksEnough({ family: 'blade', neededA: branch(651) })).toBe('no');
    expect(breaksEnough({ family: 'glass', neededA: branch(650) })).toBe('unknown');
  });
});

describe('the short circuit of a bank', () => {
  it('PW-59 (ABYC E-11 example, second-hand): six batteries of 2400 A, three strings of two, give 7200 A', () => {
    expect(
      bankShortCircuitA([
        [2400, 2400],
        [2400, 2400],
        [2400, 2400],
      ]),
    ).toBe(7200);
  });

  it('is held back by the weakest of a string, and nothing without batteries', () => {
    expect(bankShortCircuitA([[2400, 1000], [500]])).toBe(1500);
    expect(bankShortCircuitA([])).toBe(0);
    expect(bankShortCircuitA([[]])).toBe(0);
  });

  it('never falls with one more string, nor rises with one more battery in a string', () => {
    const string = fc.array(fc.integer({ min: 100, max: 5000 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        fc.array(string, { maxLength: 5 }),
        string,
        fc.integer({ min: 100, max: 5000 }),
        (bankA, one, batteryA) => {
          const withOne = bankShortCircuitA([...bankA, one]);
          expect(withOne).toBeGreaterThanOrEqual(bankShortCircuitA(bankA));
          expect(bankShortCircuitA([...bankA, [...one, batteryA]])).toBeLessThanOrEqual(withOne);
        },
      ),
    );
  });
});
