import { describe, expect, it } from 'vitest';
import { fusePlaces } from './fuse-places.ts';
import {
  bladeColours,
  deviceFuses,
  fuseAgainstConductor,
  fuseFamilies,
  fuseLimits,
  fuseMargin,
  lowestSupply,
} from './fuses.ts';
import { breaksA, faultCurrents, interruptNeededA, interruptTable, lithiumBreaks } from './interrupt.ts';

describe('the fuse of a device', () => {
  it.each([
    ['PW-47', 37, 5],
    ['PW-48', 41, 7.5],
    ['PW-49', 18, 3],
    ['PW-50', 88, 15],
    ['PW-51', 47.5, 7.5],
  ])('%s: %f W at 10 V takes a fuse of %f A (smallest size not below 1.25 x the current)', (_id, watts, fuseA) => {
    const target = (watts / lowestSupply['12'].value) * fuseMargin.value;
    expect(deviceFuses.stepsA.find((step) => step >= target - 1e-9)).toBe(fuseA);
  });

  it.each([
    ['PW-52', 20, 25, 'ok'],
    ['PW-53', 30, 25, 'warn'],
    ['PW-54', 40, 25, 'refuse'],
  ])(
    '%s: %i A on a conductor for %i A: %s (33 CFR 183.455(c)(1), own limit 100 %%)',
    (_id, fuseA, conductorA, verdict) => {
      const pct = (fuseA / conductorA) * 100;
      const { warnAbove, refuseAbove } = fuseAgainstConductor;
      expect(pct > refuseAbove.value ? 'refuse' : pct > warnAbove.value ? 'warn' : 'ok').toBe(verdict);
    },
  );

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

describe('where protection sits', () => {
  const most = (rule: string): number => fusePlaces.find((place) => place.rule === rule)?.mostMm ?? Number.NaN;

  it('170 mm from the source is allowed, 600 mm only in a sheath, 1000 mm in a sheath too (PW-60 to PW-62, 33 CFR 183.455(b))', () => {
    expect(170).toBeLessThanOrEqual(most('33 CFR 183.455(b)(1)'));
    expect(600).toBeGreaterThan(most('33 CFR 183.455(b)(1)'));
    expect(1000).toBeLessThanOrEqual(most('33 CFR 183.455(b)(2)'));
  });

  it('is within 178 mm by the rule of this project', () => {
    expect(most('this project')).toBe(178);
  });
});

describe('the fault current protection must break', () => {
  it.each([
    ['PW-55', 650, 'main', 1500],
    ['PW-56', 651, 'branch', 1500],
    ['PW-57', 1800, 'main', 5000],
    ['PW-58', 1100, 'branch', 1500],
  ] as const)('%s: %i CCA, %s: %i A (ABYC E-11 table V-A, second-hand)', (_id, cca, position, amps) => {
    expect(interruptNeededA({ cca, position })).toBe(amps);
  });

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
