import { describe, expect, it } from 'vitest';
import { ampacityTables } from './ampacity.data.ts';
import { bundleFactor, type ConductorSystem, engineFactor, tableAmpacityA } from './ampacity.ts';

interface Laid {
  readonly system: ConductorSystem;
  readonly size: string;
  readonly insulationC: number;
  readonly engineSpace: boolean;
  readonly conductors: number;
}

const allowedA = ({ system, size, insulationC, engineSpace, conductors }: Laid): number | undefined => {
  const table = tableAmpacityA({ system, size, insulationC });
  const engine = engineSpace ? engineFactor({ system, insulationC }) : 1;
  return table === undefined || engine === undefined
    ? undefined
    : table * engine * bundleFactor({ system, conductors });
};

describe('the current a conductor may carry', () => {
  it.each([
    ['PW-30', 'awg', '12', 105, true, 5, 22.95],
    ['PW-31', 'awg', '10', 105, true, 3, 35.7],
    ['PW-32', 'awg', '16', 105, false, 5, 15],
    ['PW-33', 'awg', '4', 60, false, 2, 105],
    ['PW-34', 'awg', '2/0', 90, false, 2, 285],
    ['PW-35', 'awg', '14', 75, true, 2, 15],
    ['PW-36', 'metric', '2.5', 105, false, 2, 35],
    ['PW-37', 'metric', '16', 70, true, 4, 47.25],
    ['PW-38', 'awg', '1/0', 80, false, 4, 147],
  ] as const)(
    '%s: %s %s, %i °C insulation, engine space %s, %i conductors: %f A (33 CFR 183.425 table 5; metric from memory)',
    (_id, system, size, insulationC, engineSpace, conductors, amps) => {
      expect(allowedA({ system, size, insulationC, engineSpace, conductors })).toBeCloseTo(amps, 6);
    },
  );

  it('is nothing where 60 °C metric insulation runs in an engine space, and where the table has no such size', () => {
    expect(engineFactor({ system: 'metric', insulationC: 60 })).toBeUndefined();
    expect(tableAmpacityA({ system: 'awg', size: '5', insulationC: 105 })).toBeUndefined();
    expect(tableAmpacityA({ system: 'awg', size: '12', insulationC: 70 })).toBeUndefined();
  });

  it('never falls with a better insulation, nor rises with more conductors in the bundle', () => {
    for (const { amps } of Object.values(ampacityTables))
      for (const row of Object.values(amps)) expect(row).toEqual([...row].sort((a, b) => a - b));
    for (const system of ['awg', 'metric'] as const)
      for (let conductors = 1; conductors < 30; conductors += 1)
        expect(bundleFactor({ system, conductors: conductors + 1 })).toBeLessThanOrEqual(
          bundleFactor({ system, conductors }),
        );
  });

  it('is no more than a fuse may be doubled by: the wrong public table gives 170 A for 16 mm², this one 130 A at 105 °C', () => {
    expect(tableAmpacityA({ system: 'metric', size: '16', insulationC: 105 })).toBe(130);
    expect(tableAmpacityA({ system: 'metric', size: '16', insulationC: 200 })).toBe(170);
  });
});
