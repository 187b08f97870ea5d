import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pickFeed } from './pick-feed.ts';
import { pickFuse } from './pick-fuse.ts';
import { lowestSupplyV, steadyCurrentA } from './steady-current.ts';

describe('the fuse of a device', () => {
  it.each([
    ['PW-47', 37, 3.7, 4.625, 5],
    ['PW-48', 41, 4.1, 5.125, 7.5],
    ['PW-49', 18, 1.8, 2.25, 3],
    ['PW-50', 88, 8.8, 11, 15],
    ['PW-51', 47.5, 4.75, 5.938, 7.5],
  ])(
    '%s (smallest standard size, practice; computed): %f W at 10 V are %f A, times 1.25 %f A, so %f A',
    (_id, powerW, steadyA, targetA, ratingA) => {
      const steady = steadyCurrentA({ powerW, lowestV: lowestSupplyV(12) });
      expect(steady).toBeCloseTo(steadyA, 9);
      const fuse = pickFuse({ steadyA: steady, family: 'blade' });
      expect(fuse).toMatchObject({ fits: true, ratingA, slow: false, decidedBy: 'load' });
      expect(Math.abs(fuse.targetA - targetA)).toBeLessThan(0.001);
    },
  );

  it('is reckoned at 10 V on a 12 V boat, 20 V on one of 24 V, and in that proportion on others', () => {
    expect([12, 24, 48].map(lowestSupplyV)).toEqual([10, 20, 40]);
  });

  it('is exactly as large as the target where one is made so: 4 A steady take 5 A, 6 A take 7.5 A', () => {
    expect(pickFuse({ steadyA: 4 })).toMatchObject({ ratingA: 5 });
    expect(pickFuse({ steadyA: 6 })).toMatchObject({ ratingA: 7.5 });
    expect(pickFuse({ steadyA: 0.8 * 3 })).toMatchObject({ ratingA: 3 });
  });

  it('is the maker’s where that is smaller, even below 1.25 x the current', () => {
    expect(pickFuse({ steadyA: 4.1, statedA: 5 })).toMatchObject({ ratingA: 5, decidedBy: 'maker' });
    expect(pickFuse({ steadyA: 4.1, statedA: 6 })).toMatchObject({ ratingA: 5, decidedBy: 'maker' });
    expect(pickFuse({ steadyA: 4.1, statedA: 15 })).toMatchObject({ ratingA: 7.5, decidedBy: 'load' });
  });

  it('of a pilot pump with a peak of 34 A is the 40 A its maker states, and slow at its load where the maker is silent', () => {
    expect(pickFuse({ steadyA: 15, peakA: 34, statedA: 40 })).toMatchObject({ ratingA: 40, slow: false });
    expect(pickFuse({ steadyA: 15, peakA: 34 })).toMatchObject({ ratingA: 20, slow: true, decidedBy: 'load' });
  });

  it('is none where the maker’s is below what the unit draws for long, or no rating lies between', () => {
    expect(pickFuse({ steadyA: 6, statedA: 5 })).toMatchObject({ fits: false, why: 'maker' });
    expect(pickFuse({ steadyA: 5.5, statedA: 6 })).toMatchObject({ fits: false, why: 'no-rating' });
    expect(pickFuse({ steadyA: 60 })).toMatchObject({ fits: false, why: 'no-rating', targetA: 75 });
  });

  it('is none behind too thin a wire: then the wire must carry the rating', () => {
    expect(pickFuse({ steadyA: 9, conductorA: 12 })).toEqual({
      fits: false,
      why: 'conductor',
      targetA: 11.25,
      ratingA: 15,
    });
    expect(pickFuse({ steadyA: 9, conductorA: 15 })).toMatchObject({ fits: true, ratingA: 15 });
  });

  it('in another family is the next of its own ratings', () => {
    expect(pickFuse({ steadyA: 6, family: 'panel-breaker' })).toMatchObject({ ratingA: 8 });
    expect(pickFuse({ steadyA: 90, family: 'class-t' })).toMatchObject({ ratingA: 125 });
  });
});

const wire = {
  system: 'awg',
  loopM: 4,
  dropV: 0.36,
  insulationC: 105,
  engineSpace: false,
  carryingConductors: 6,
  sheathed: true,
} as const;

describe('a feed', () => {
  it('has a thicker wire where its fuse is more than the wire of its current carries', () => {
    const feed = pickFeed({ load: { steadyA: 15, peakA: 34, statedA: 40 }, wire });
    expect(feed).toMatchObject({ fits: true, fuse: { ratingA: 40 }, wire: { conductor: { size: '8' } } });
  });

  it('without a fuse or a wire says so', () => {
    expect(pickFeed({ load: { steadyA: 60 }, wire })).toMatchObject({ fits: false, fuse: { why: 'no-rating' } });
    const far = pickFeed({ load: { steadyA: 30 }, wire: { ...wire, loopM: 300 } });
    expect(far).toMatchObject({ fits: false, fuse: { ratingA: 40 }, wire: { why: 'drop' } });
  });

  it('never has a fuse above what its wire carries, and its fuse carries the load', () => {
    const load = fc.record({
      steadyA: fc.double({ min: 0.05, max: 32, noNaN: true }),
      peakA: fc.double({ min: 0, max: 60, noNaN: true }),
    });
    const laid = fc.record({
      system: fc.constantFrom('awg' as const, 'metric' as const),
      engineSpace: fc.boolean(),
      carryingConductors: fc.integer({ min: 1, max: 30 }),
      loopM: fc.double({ min: 0.2, max: 30, noNaN: true }),
    });
    fc.assert(
      fc.property(load, laid, (of, how) => {
        const feed = pickFeed({ load: of, wire: { ...wire, ...how } });
        fc.pre(feed.fits);
        expect(feed.wire.ampacity.allowedA).toBeGreaterThanOrEqual(feed.fuse.ratingA - 1e-6);
        expect(feed.fuse.ratingA).toBeGreaterThanOrEqual(of.steadyA * 1.25 - 1e-6);
        expect(feed.fuse.slow).toBe(of.peakA > feed.fuse.ratingA);
      }),
    );
  });
});
