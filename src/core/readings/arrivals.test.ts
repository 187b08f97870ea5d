import { describe, expect, it } from 'vitest';
import type { Need } from '../boat/boat-schema.ts';
import { inward, one, screen, sounder } from './arrival-sketches.test-helper.ts';
import { arriving, need, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

describe('a reading arrives', () => {
  it('from a sounder through a converter on a screen, by both ports of each unit', () => {
    const entry = one({
      units: { sounder: sounder('DPT'), conv: inward('DPT'), screen },
      joins: { wire: ['sounder.out', 'conv.in'], nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen', { withOffset: true, reference: 'keel', everyMs: 1000 })],
    });
    expect(entry).toEqual({
      reading: 'depth',
      at: 'screen',
      must: true,
      arrives: true,
      rests: 'manual',
      by: ['sounder.out', 'conv.in', 'conv.n2k', 'screen.n2k'],
      forms: [
        { sentence: 'DPT', everyMs: 1000 },
        { sentence: 'DPT', everyMs: 1000 },
        { pgn: 128267, everyMs: 1000 },
        { pgn: 128267, everyMs: 1000 },
      ],
      backups: [],
    });
  });

  it('through a switch, whose ports are one network', () => {
    const eth = (sends: string[], hears: string[]): UnitSketch => ({
      ports: { eth: { protocol: 'ethernet', sends, hears } },
    });
    const port = { protocol: 'ethernet', sends: [], hears: [] } as const;
    const entry = one({
      units: {
        radar: eth(['radar-picture'], []),
        switch: { ports: { p1: port, p2: port, p3: port }, together: [['p1', 'p2', 'p3']] },
        screen: eth([], ['radar-picture']),
      },
      joins: { a: ['radar.eth', 'switch.p1'], b: ['switch.p3', 'screen.eth'] },
      needs: [need('radar-picture', 'screen')],
    });
    expect(entry?.by).toEqual(['radar.eth', 'switch.p1', 'switch.p3', 'screen.eth']);
  });

  it('through a unit in line, which carries the bus on', () => {
    const n2k = { protocol: 'nmea2000', sends: [], hears: [] } as const;
    const entry = one({
      units: {
        gnss: { ports: { n2k: { protocol: 'nmea2000', sends: [129025] } } },
        middle: { ports: { a: n2k, b: n2k }, inLine: ['a', 'b'] },
        screen,
      },
      joins: { nav: ['gnss.n2k', 'middle.a'], ship: ['middle.b', 'screen.n2k'] },
      needs: [need('position', 'screen')],
    });
    expect(entry?.by).toEqual(['gnss.n2k', 'middle.a', 'middle.b', 'screen.n2k']);
  });

  it('from the screen itself where it has its own antenna, with the other source as backup', () => {
    const own: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [129025], hears: [129025] } } };
    const entry = one({
      units: { gnss: { ports: { n2k: { protocol: 'nmea2000', sends: [129025] } } }, screen: own },
      joins: { nav: ['gnss.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen', { everyMs: 1000 })],
    });
    expect(entry?.by).toEqual(['screen.n2k']);
    expect(entry?.backups).toEqual([['gnss.n2k', 'screen.n2k']]);
  });

  it('as a shared chart only from another screen', () => {
    const plotter: UnitSketch = {
      ports: { eth: { protocol: 'ethernet', sends: ['chart-share'], hears: ['chart-share'] } },
    };
    const alone = one({ units: { helm: plotter }, joins: {}, needs: [need('chart-share', 'helm')] });
    expect(alone?.whyNot?.says).toBe('Nothing else aboard sends shared charts.');
    const two = one({
      units: { fly: plotter, helm: plotter },
      joins: { link: ['fly.eth', 'helm.eth'] },
      needs: [need('chart-share', 'fly')],
    });
    expect(two?.by).toEqual(['helm.eth', 'fly.eth']);
  });

  it('with backups that share no unit with the first way, shortest first', () => {
    const gnss: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [129025] } } };
    const talker = (id: string): UnitSketch => ({ ports: { [id]: { protocol: 'nmea0183', sends: ['GLL'] } } });
    const conv: UnitSketch = {
      ports: { in: { protocol: 'nmea0183', hears: ['GLL'] }, n2k: { protocol: 'nmea2000', sends: [129025] } },
      turns: [turn('in', 'n2k', 'position')],
    };
    const entry = one({
      units: { a: gnss, b: gnss, c: talker('out'), conv, screen },
      joins: { nav: ['a.n2k', 'b.n2k', 'conv.n2k', 'screen.n2k'], wire: ['c.out', 'conv.in'] },
      needs: [need('position', 'screen')],
    });
    expect(entry?.by).toEqual(['a.n2k', 'screen.n2k']);
    expect(entry?.backups).toEqual([
      ['b.n2k', 'screen.n2k'],
      ['c.out', 'conv.in', 'conv.n2k', 'screen.n2k'],
    ]);
  });

  it('and rests on the weakest sheet of the way', () => {
    const rests = (source: 'typical' | 'recording') =>
      one({
        units: { sounder: { ...sounder('DPT'), source }, conv: inward('DPT'), screen },
        joins: { wire: ['sounder.out', 'conv.in'], nav: ['conv.n2k', 'screen.n2k'] },
        needs: [need('depth', 'screen')],
      })?.rests;
    expect(rests('typical')).toBe('typical');
    expect(rests('recording')).toBe('manual');
  });

  it('only in the phases in which its source is aboard', () => {
    const sketch = (kit: UnitSketch['kit']): Sketch => ({
      units: { sounder: { ...sounder('DPT'), ...(kit === undefined ? {} : { kit }) }, conv: inward('DPT'), screen },
      joins: { wire: ['sounder.out', 'conv.in'], nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
    expect(one(sketch({ fate: 'comes', phase: 2 }), 2)?.arrives).toBe(true);
    expect(one(sketch({ fate: 'comes', phase: 2 }), 1)?.whyNot).toMatchObject({
      link: { broken: 'comes-later', from: 'sounder.out', to: 'conv.in' },
      says: 'sounder, which brings it, comes aboard in phase 2.',
    });
    expect(one(sketch({ fate: 'goes' }), 0)?.arrives).toBe(true);
    expect(one(sketch({ fate: 'goes' }), 1)?.whyNot?.link).toEqual({
      broken: 'source-leaves',
      from: 'sounder.out',
      to: 'conv.in',
    });
  });

  it('as true wind only where water speed reaches the unit that works it out', () => {
    const sketch = (wants: Partial<Need>, ...more: string[]): Sketch => ({
      units: {
        vane: { ports: { n2k: { protocol: 'nmea2000', sends: [130306] } } },
        log: { ports: { n2k: { protocol: 'nmea2000', sends: [128259] } } },
        gnss: { ports: { n2k: { protocol: 'nmea2000', sends: [129026] } } },
        plotter: {
          ports: { n2k: { protocol: 'nmea2000', sends: ['wind-true'], hears: [130306, 128259, 129026] } },
        },
      },
      joins: { nav: ['plotter.n2k', 'vane.n2k', ...more] },
      needs: [need('wind-true', 'plotter', wants)],
    });
    expect(one(sketch({ reference: 'water' }, 'log.n2k'))?.by).toEqual(['plotter.n2k']);
    expect(one(sketch({}))?.whyNot).toMatchObject({
      link: { broken: 'no-source', from: 'plotter.n2k' },
      says: 'plotter works out true wind from apparent wind and speed through water, but speed through water does not reach it.',
    });
    expect(one(sketch({ reference: 'water' }, 'gnss.n2k'))?.whyNot?.link.broken).toBe('wrong-reference');
    expect(one(sketch({}, 'gnss.n2k'))?.arrives).toBe(true);
  });

  it('as a true heading where a magnetic one and the variation reach the screen', () => {
    const plotter: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', hears: [127250, 127258] } } };
    const sketch = (...members: string[]): Sketch => ({
      units: {
        compass: sounder('HDM'),
        conv: inward('HDM'),
        gnss: { ports: { n2k: { protocol: 'nmea2000', sends: [127258] } } },
        plotter,
      },
      joins: { wire: ['compass.out', 'conv.in'], nav: ['conv.n2k', 'plotter.n2k', ...members] },
      needs: [need('heading', 'plotter', { reference: 'true' })],
    });
    expect(one(sketch('gnss.n2k'))?.arrives).toBe(true);
    expect(one(sketch())?.whyNot).toEqual({
      link: { broken: 'wrong-reference', from: 'compass.out', to: 'conv.in' },
      says: 'compass sends heading as HDM as magnetic; true is needed.',
      cures: ['Bring variation to plotter.'],
    });
  });
});

describe('instance numbers', () => {
  const sender = (out: string): UnitSketch => ({ ports: { out: { protocol: 'analog', sends: [out] } } });
  const box: UnitSketch = {
    ports: {
      'in-1': { protocol: 'analog', hears: ['fuel-level', 'water-level'] },
      'in-2': { protocol: 'analog', hears: ['fuel-level', 'water-level'] },
      n2k: { protocol: 'nmea2000', sends: [127505] },
    },
    turns: [
      turn('in-1', 'n2k', { reading: 'fuel-level', asInstance: 0 }),
      turn('in-2', 'n2k', { reading: 'fuel-level', asInstance: 1 }),
    ],
  };
  const plotter: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', hears: [127505, 127488] } } };

  it('are given by a tank adapter input by input, and its one message is fuel only', () => {
    const entries = arriving(
      wired({
        units: { port: sender('fuel-level'), starboard: sender('fuel-level'), box, plotter },
        joins: { a: ['port.out', 'box.in-1'], b: ['starboard.out', 'box.in-2'], nav: ['box.n2k', 'plotter.n2k'] },
        needs: [
          need('fuel-level', 'plotter', { instance: 0 }),
          need('fuel-level', 'plotter', { instance: 1 }),
          need('fuel-level', 'plotter', { instance: 2 }),
          need('water-level', 'plotter'),
        ],
      }),
    );
    expect(entries.map(({ by }) => by[0])).toEqual(['port.out', 'starboard.out', undefined, undefined]);
    expect(entries[2]?.whyNot?.link.broken).toBe('wrong-instance');
    expect(entries[3]?.whyNot?.link.broken).toBe('no-source');
  });

  it('come from the unit before they come from its sheet or its engine', () => {
    const engine: UnitSketch = {
      ports: { can: { protocol: 'engine-can', sends: [{ reading: 'engine', instance: 0 }] } },
    };
    const gateway = (instances: NonNullable<UnitSketch['kit']>['instances']): UnitSketch => ({
      ports: { can: { protocol: 'engine-can', hears: ['engine'] }, n2k: { protocol: 'nmea2000', sends: [127488] } },
      turns: [turn('can', 'n2k', 'engine')],
      ...(instances === undefined ? {} : { kit: { instances } }),
    });
    const arrives = (instances: NonNullable<UnitSketch['kit']>['instances'], instance: number) =>
      one({
        units: { engine, gateway: gateway(instances), plotter },
        joins: { can: ['engine.can', 'gateway.can'], nav: ['gateway.n2k', 'plotter.n2k'] },
        needs: [need('engine', 'plotter', { instance })],
      })?.arrives;
    expect([arrives(undefined, 0), arrives(undefined, 1)]).toEqual([true, false]);
    const starboard = [{ port: 'n2k', reading: 'engine' as const, instance: 1 }];
    expect([arrives(starboard, 0), arrives(starboard, 1)]).toEqual([false, true]);
  });
});
