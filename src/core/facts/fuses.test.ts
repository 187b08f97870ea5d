import { describe, expect, it } from 'vitest';
import { bladeColours, deviceFuses, fuseAgainstConductor, fuseFamilies, fuseLimits } from './fuses.ts';
import { breaksA, faultCurrents, interruptNeededA, interruptTable, lithiumBreaks } from './interrupt.ts';

describe('the fuse of a device', () => {
  it('is refused where even the laxest text would refuse it', () => {
    const laxest = Math.max(...fuseLimits.map(({ pct }) => pct));
    expect(fuseAgainstConductor.refuseAbove.value).toBe(laxest);
    expect(fuseAgainstConductor.warnAbove.value).toBe(Math.min(...fuseLimits.map(({ pct }) => pct)));
  });

  it('has a colour for most blades, each of a rating blades are made in', () => {
    const steps: readonly number[] = fuseFamilies.blade.stepsA;
    expect(bladeColours.filter(({ ratingA }) => !steps.includes(ratingA))).toEqual([]);
    expect(new Set(bladeColours.map(({ colour }) => colour)).size).toBe(bladeColours.length);
  });

  it('rises from one step of its family to the next', () => {
    for (const { stepsA } of Object.values(fuseFamilies)) expect(stepsA).toEqual([...stepsA].sort((a, b) => a - b));
    expect(deviceFuses.stepsA).toEqual(fuseFamilies.blade.stepsA);
  });
});

describe('the fault current protection must break', () => {
  it('a blade fuse is no main fuse at any battery, and a branch fuse up to 650 CCA', () => {
    expect(breaksA.blade.amps).toBeLessThan(interruptNeededA({ cca: 0, position: 'main' }));
    expect(breaksA.blade.amps).toBeGreaterThanOrEqual(interruptNeededA({ cca: 650, position: 'branch' }));
    expect(breaksA.blade.amps).toBeLessThan(interruptNeededA({ cca: 651, position: 'branch' }));
  });

  it('at a lithium bank only class T can break, and a large lead bank gives more than a blade can', () => {
    const able = Object.entries(breaksA).filter(([, { amps }]) => amps >= lithiumBreaks.value);
    expect(able.map(([kind]) => kind)).toEqual(['class-t']);
    expect(faultCurrents.find(({ what }) => what === 'bank of lead batteries')?.leastA).toBeGreaterThan(
      breaksA.blade.amps,
    );
  });

  it('is always more at the main than at a branch', () => {
    for (const { mainA, branchA } of interruptTable.rows) expect(mainA).toBeGreaterThan(branchA);
  });
});
