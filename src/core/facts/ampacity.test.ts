import { describe, expect, it } from 'vitest';
import { ampacityTables } from './ampacity.data.ts';
import { bundleFactor, engineFactor, tableAmpacityA } from './ampacity.ts';

describe('the current a conductor may carry', () => {
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
