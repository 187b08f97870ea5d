import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductorsOf } from './conductors-of.ts';
import { type ConductorAsk, pickConductor } from './pick-conductor.ts';

const ask = {
  system: 'awg',
  currentA: 100,
  loopM: 3.048,
  dropV: 1.2,
  insulationC: 105,
  engineSpace: false,
  carryingConductors: 2,
  sheathed: false,
} as const;
const sensor = { ...ask, currentA: 0.5, loopM: 6 * 0.3048, dropV: 0.36, fuseA: 3 } as const;
const computed = 'larger of drop size, ampacity size and legal minimum, computed';

describe('a conductor', () => {
  it.each([
    ['PW-39', computed, '100 A over 10 ft at 10 %', '10', '6', '6', 'ampacity', ask],
    ['PW-40', computed, 'the same in an engine space', '10', '6', '6', 'ampacity', { ...ask, engineSpace: true }],
    ['PW-41', computed, '0.5 A for a sensor, fused at 3 A', '18', '18', '16', 'least-size', sensor],
  ] as const)(
    '%s (%s): %s wants %s AWG by drop and %s by current, so %s AWG, decided by %s',
    (_id, _source, _says, byDrop, byAmpacity, size, decidedBy, of) => {
      expect(pickConductor(of)).toMatchObject({ fits: true, byDrop, byAmpacity, conductor: { size }, decidedBy });
    },
  );

  it('of a display far from the panel is as thick as its volts ask', () => {
    const display = { ...ask, system: 'metric', currentA: 4.1, loopM: 16, dropV: 0.36, sheathed: true } as const;
    expect(pickConductor(display)).toMatchObject({ conductor: { size: '4' }, decidedBy: 'drop', byAmpacity: '0.75' });
  });

  it('carries its fuse, not only its current', () => {
    expect(pickConductor({ ...ask, currentA: 20, loopM: 1 })).toMatchObject({ byAmpacity: '18' });
    expect(pickConductor({ ...ask, currentA: 20, loopM: 1, fuseA: 60 })).toMatchObject({ byAmpacity: '10' });
  });

  it('is named after the heat where all three ask for one size, and after the volts before the least size', () => {
    expect(pickConductor({ ...sensor, sheathed: true })).toMatchObject({
      conductor: { size: '18' },
      decidedBy: 'ampacity',
    });
    const far = { ...sensor, currentA: 2, dropV: 0.36, loopM: 10 };
    expect(pickConductor(far)).toMatchObject({ byDrop: '16', byAmpacity: '18', decidedBy: 'drop' });
  });

  it('has no least size where its way, half of out and back, is a pigtail', () => {
    expect(pickConductor({ ...sensor, loopM: 0.34 })).toMatchObject({ conductor: { size: '18' } });
    expect(pickConductor({ ...sensor, loopM: 0.36 })).toMatchObject({ conductor: { size: '16' } });
    expect(pickConductor({ ...sensor, use: 'navigation-electronics' })).toMatchObject({ conductor: { size: '18' } });
  });

  it('in an engine space loses 8 % more than the rule its gauge is picked by', () => {
    const picked = pickConductor({ ...ask, engineSpace: true });
    if (!picked.fits) throw new Error(picked.why);
    expect(picked.realDropV / picked.ruleDropV).toBeCloseTo(1.08, 2);
  });

  it('shows the published rule beside the real cable, and the real cable loses more', () => {
    const lamp = { ...ask, system: 'metric', currentA: 1.6, loopM: 22, dropV: 0.6 } as const;
    const picked = pickConductor(lamp);
    if (!picked.fits) throw new Error(picked.why);
    expect(picked.conductor.size).toBe('1.5');
    expect(picked.ruleDropV).toBeCloseTo(0.3849, 4);
    expect(picked.realDropV).toBeCloseTo(0.4822 * (260 / 250), 3);
  });

  it('there is none for more current or volts than the thickest stands, nor with insulation not allowed in an engine space', () => {
    expect(pickConductor({ ...ask, currentA: 500 })).toEqual({ fits: false, why: 'ampacity' });
    expect(pickConductor({ ...ask, loopM: 200 })).toEqual({ fits: false, why: 'drop' });
    const cool = { ...ask, system: 'metric', insulationC: 60, engineSpace: true } as const;
    expect(pickConductor(cool)).toEqual({ fits: false, why: 'insulation' });
  });
});

const anyAsk: fc.Arbitrary<ConductorAsk> = fc.record({
  system: fc.constantFrom('awg' as const, 'metric' as const),
  currentA: fc.double({ min: 0.1, max: 120, noNaN: true }),
  loopM: fc.double({ min: 0.1, max: 40, noNaN: true }),
  dropV: fc.double({ min: 0.1, max: 2.4, noNaN: true }),
  fuseA: fc.constantFrom(1, 5, 15, 40),
  insulationC: fc.constantFrom(90, 105),
  engineSpace: fc.boolean(),
  carryingConductors: fc.integer({ min: 1, max: 12 }),
  sheathed: fc.boolean(),
});

it('a picked conductor keeps its drop, its current, its fuse and its least size, and the next thinner one does not', () => {
  fc.assert(
    fc.property(anyAsk, (of) => {
      const picked = pickConductor(of);
      fc.pre(picked.fits);
      const sizes = conductorsOf(of.system);
      const at = sizes.indexOf(picked.conductor);
      const atOf = (size: string) => sizes.findIndex((one) => one.size === size);
      expect(picked.ampacity.allowedA).toBeGreaterThanOrEqual(Math.max(of.currentA, of.fuseA ?? 0) - 1e-6);
      const sizedByV = of.system === 'awg' ? picked.ruleDropV : picked.realDropV;
      expect(sizedByV).toBeLessThanOrEqual(of.dropV * 1.0005);
      const least = picked.leastSize.binds ? atOf(picked.leastSize.size) : 0;
      expect(at).toBe(Math.max(atOf(picked.byDrop), atOf(picked.byAmpacity), least));
    }),
  );
});
