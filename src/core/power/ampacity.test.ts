import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampacityTables } from '../facts/ampacity.data.ts';
import { ampacity } from './ampacity.ts';
import { conductorsOf } from './conductors-of.ts';

const cfr = '33 CFR 183.425 table 5, published; computed with factors';
const memory = 'ISO 10133 and 13297 table A.1, from memory';

describe('the current a conductor may carry', () => {
  it.each([
    ['PW-30', cfr, 'awg', '12', 105, true, 5, 22.95, 22],
    ['PW-31', cfr, 'awg', '10', 105, true, 3, 35.7, 35],
    ['PW-32', cfr, 'awg', '16', 105, false, 5, 15, 15],
    ['PW-33', cfr, 'awg', '4', 60, false, 2, 105, 105],
    ['PW-34', cfr, 'awg', '2/0', 90, false, 2, 285, 285],
    ['PW-35', `${cfr}; engine factor from memory`, 'awg', '14', 75, true, 2, 15, 15],
    ['PW-36', memory, 'metric', '2.5', 105, false, 2, 35, 35],
    ['PW-37', memory, 'metric', '16', 70, true, 4, 47.25, 47],
    ['PW-38', cfr, 'awg', '1/0', 80, false, 4, 147, 147],
  ] as const)(
    '%s (%s): %s %s, %i °C insulation, engine space %s, %i conductors: %f A, printed as %i A',
    (_id, _source, system, size, insulationC, engineSpace, carryingConductors, allowedA, shownA) => {
      const may = ampacity({ system, size, insulationC, engineSpace, carryingConductors });
      expect(may?.allowedA).toBeCloseTo(allowedA, 6);
      expect(may?.shownA).toBe(shownA);
    },
  );

  it('is none where 60 °C metric insulation runs in an engine space, and where the table has no such size', () => {
    const laid = { insulationC: 60, engineSpace: true, carryingConductors: 2 };
    expect(ampacity({ system: 'metric', size: '2.5', ...laid })).toBeUndefined();
    expect(ampacity({ system: 'awg', size: '5', ...laid })).toBeUndefined();
    expect(ampacity({ system: 'awg', size: '12', ...laid, insulationC: 70 })).toBeUndefined();
  });

  it('keeps each table with its own factors: three in a bundle cost a gauge 30 % and a metric size nothing', () => {
    const laid = { insulationC: 105, engineSpace: false, carryingConductors: 3 };
    expect(ampacity({ system: 'awg', size: '10', ...laid })?.bundleFactor).toBe(0.7);
    expect(ampacity({ system: 'metric', size: '6', ...laid })?.bundleFactor).toBe(1);
  });

  it('says where it comes from, and that metric figures are from memory', () => {
    const laid = { insulationC: 75, engineSpace: true, carryingConductors: 4 };
    const gauge = ampacity({ system: 'awg', size: '12', ...laid });
    expect(gauge?.sources).toEqual(['cfr-33-183-425', 'memory-engine-factors', 'uscg-bundles']);
    const metric = ampacity({ system: 'metric', size: '4', ...laid, insulationC: 70 });
    expect(metric?.sources).toEqual(['memory-iso-ampacity']);
  });

  it('never rises in an engine space or in a larger bundle, and never falls in a thicker conductor', () => {
    const laid = fc.constantFrom('awg' as const, 'metric' as const).chain((system) =>
      fc.record({
        system: fc.constant(system),
        insulationC: fc.constantFrom<number>(...ampacityTables[system].insulationC.filter((c) => c > 60)),
        at: fc.nat(conductorsOf(system).length - 2),
        carryingConductors: fc.integer({ min: 1, max: 30 }),
        more: fc.nat(20),
      }),
    );
    fc.assert(
      fc.property(laid, fc.boolean(), ({ system, at, more, carryingConductors, insulationC }, engineSpace) => {
        const allowedA = (step: number, conductors: number, inEngineSpace: boolean): number =>
          ampacity({
            system,
            size: conductorsOf(system)[step]?.size ?? '',
            insulationC,
            carryingConductors: conductors,
            engineSpace: inEngineSpace,
          })?.allowedA ?? 0;
        const here = allowedA(at, carryingConductors, engineSpace);
        expect(allowedA(at + 1, carryingConductors, engineSpace)).toBeGreaterThanOrEqual(here);
        expect(allowedA(at, carryingConductors + more, engineSpace)).toBeLessThanOrEqual(here);
        expect(allowedA(at, carryingConductors, true)).toBeLessThanOrEqual(here);
      }),
    );
  });
});
