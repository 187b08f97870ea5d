import { describe, expect, it } from 'vitest';
import { arriving, need, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

const next = { fate: 'comes', phase: 2 } as const;
const sender = (...sends: NonNullable<UnitSketch['ports'][string]['sends']>): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends } },
});
const hearer = (...hears: NonNullable<UnitSketch['ports'][string]['hears']>): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', hears } },
});
const transducer: UnitSketch = { ports: { echo: { protocol: 'analog', sends: ['depth'] } } };
const box: UnitSketch = {
  ports: { echo: { protocol: 'analog', hears: ['depth'] }, n2k: { protocol: 'nmea2000', sends: [128267] } },
  turns: [turn('echo', 'n2k', 'depth')],
};
const whyIn = (sketch: Sketch, phase: number) => arriving(wired(sketch), phase)[0]?.whyNot;

describe('a reading that a later phase brings', () => {
  it('waits for the converter that comes, and the transducer aboard is not blamed', () => {
    const sketch: Sketch = {
      units: { transducer, box: { ...box, kit: next }, screen: hearer(128267) },
      joins: { echo: ['transducer.echo', 'box.echo'], nav: ['box.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 1)).toEqual({
      link: { broken: 'comes-later', from: 'box.n2k', to: 'screen.n2k' },
      says: 'box, which brings it, comes aboard in phase 2.',
      cures: ['Fit box in phase 1 already, or do without until phase 2.'],
    });
    expect(whyIn(sketch, 2)).toBeUndefined();
  });

  it('names every unit of its way that comes, and the phase in which the last of them does', () => {
    const sketch: Sketch = {
      units: {
        transducer: { ...transducer, kit: next },
        box: { ...box, kit: { ...next, phase: 3 } },
        screen: hearer(128267),
      },
      joins: { echo: ['transducer.echo', 'box.echo'], nav: ['box.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 1)?.says).toBe('transducer and box, which bring it, come aboard in phase 3.');
    expect(whyIn(sketch, 2)?.says).toBe('box, which brings it, comes aboard in phase 3.');
  });

  it('waits for what it is worked out from', () => {
    const sketch: Sketch = {
      units: {
        vane: sender(130306),
        log: { ...sender(128259), kit: next },
        plotter: {
          ports: { n2k: { protocol: 'nmea2000', sends: ['wind-true'], hears: [130306, 128259] } },
        },
      },
      joins: { nav: ['vane.n2k', 'log.n2k', 'plotter.n2k'] },
      needs: [need('wind-true', 'plotter')],
    };
    expect(whyIn(sketch, 1)?.link).toEqual({ broken: 'comes-later', from: 'log.n2k', to: 'plotter.n2k' });
  });

  it('waits for the variation that makes a magnetic heading true', () => {
    const sketch: Sketch = {
      units: {
        compass: { ports: { out: { protocol: 'nmea0183', sends: ['HDM'] } } },
        conv: {
          ports: { in: { protocol: 'nmea0183', hears: ['HDM'] }, n2k: { protocol: 'nmea2000', sends: [127250] } },
          turns: [turn('in', 'n2k', 'heading')],
        },
        gnss: { ...sender(127258), kit: next },
        plotter: hearer(127250, 127258),
      },
      joins: { wire: ['compass.out', 'conv.in'], nav: ['conv.n2k', 'gnss.n2k', 'plotter.n2k'] },
      needs: [need('heading', 'plotter', { reference: 'true' })],
    };
    expect(whyIn(sketch, 1)).toMatchObject({
      link: { broken: 'comes-later', from: 'gnss.n2k' },
      says: 'gnss, which brings it as it is needed, comes aboard in phase 2; until then, compass sends heading as HDM as magnetic; true is needed.',
    });
  });

  it('breaks where it breaks when it does not arrive in any phase', () => {
    const sketch: Sketch = {
      units: { old: sender(128267), box: { ...box, kit: next }, screen: hearer(129025) },
      joins: { nav: ['old.n2k', 'box.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 1)?.link.broken).toBe('not-heard');
  });
});

describe('a reading that the refit takes away', () => {
  const goes = { fate: 'goes', phase: 2 } as const;

  it('goes with the converter that leaves, and the transducer that stays is not blamed', () => {
    const sketch: Sketch = {
      units: { transducer, box: { ...box, kit: goes }, screen: hearer(128267) },
      joins: { echo: ['transducer.echo', 'box.echo'], nav: ['box.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 1)).toBeUndefined();
    expect(whyIn(sketch, 2)).toEqual({
      link: { broken: 'source-leaves', from: 'box.n2k', to: 'screen.n2k' },
      says: 'box, which brought it, leaves in phase 2, and nothing takes its place.',
      cures: ['Keep box, or fit another way for it.'],
    });
  });

  it('breaks at the new source where one is aboard that only has to be joined', () => {
    const sketch: Sketch = {
      units: { old: { ...sender(128267), kit: goes }, fresh: sender(128267), screen: hearer(128267) },
      joins: { nav: ['old.n2k', 'screen.n2k'], ship: ['fresh.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 2)?.link).toEqual({ broken: 'not-joined', from: 'fresh.n2k', to: 'screen.n2k' });
  });

  it('is told of a screen that never had it, when its only source leaves', () => {
    const sketch: Sketch = {
      units: { old: { ...sender(128267), kit: goes }, screen: { ...hearer(128267), kit: next } },
      joins: { nav: ['old.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 2)).toMatchObject({
      link: { broken: 'source-leaves', from: 'old.n2k' },
      says: 'Nothing aboard sends depth: old, which did, leaves in phase 2.',
    });
  });

  it('is not promised by a unit that comes and is not heard even then', () => {
    const sketch: Sketch = {
      units: { fresh: { ...sender(128267), kit: next }, screen: hearer(128267) },
      joins: { nav: ['screen.n2k'], ship: ['fresh.n2k'] },
      needs: [need('depth', 'screen')],
    };
    expect(whyIn(sketch, 1)).toMatchObject({
      link: { broken: 'source-not-aboard', from: 'fresh.n2k' },
      says: 'Nothing aboard sends depth: fresh, which does, comes aboard in phase 2, and even then it does not reach screen.',
    });
  });
});
