import { describe, expect, it } from 'vitest';
import { arriving, need, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

const one = (sketch: Sketch) => arriving(wired(sketch))[0];
const bus = (...sends: NonNullable<UnitSketch['ports'][string]['sends']>): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends } },
});
const dial = (...hears: string[]): UnitSketch => ({ ports: { in: { protocol: 'nmea0183', hears } } });

describe('what a converter keeps of a reading', () => {
  it('loses the offset where its turn says so, though DPT could carry it', () => {
    const sketch = (loses: ('offset' | 'instance')[]): Sketch => ({
      units: {
        depth: bus(128267),
        conv: {
          ports: {
            n2k: { protocol: 'nmea2000', hears: [128267] },
            out: { protocol: 'nmea0183', sends: ['DPT'] },
          },
          turns: [turn('n2k', 'out', { reading: 'depth', loses })],
        },
        dial: dial('DPT'),
      },
      joins: { nav: ['depth.n2k', 'conv.n2k'], wire: ['conv.out', 'dial.in'] },
      needs: [need('depth', 'dial', { withOffset: true })],
    });
    expect(one(sketch(['instance']))?.arrives).toBe(true);
    expect(one(sketch(['offset']))?.whyNot?.link).toEqual({ broken: 'no-offset', from: 'conv.out', to: 'dial.in' });
  });

  const heading = (sends: string, reference: 'true' | 'magnetic', loses: 'reference'[] = []): Sketch => ({
    units: {
      compass: { ports: { out: { protocol: 'nmea0183', sends: ['HDM'] } } },
      conv: {
        ports: { in: { protocol: 'nmea0183', hears: ['HDM'] }, out: { protocol: 'nmea0183', sends: [sends] } },
        turns: [turn('in', 'out', { reading: 'heading', loses })],
      },
      dial: dial('HDM', 'HDT'),
    },
    joins: { a: ['compass.out', 'conv.in'], b: ['conv.out', 'dial.in'] },
    needs: [need('heading', 'dial', { reference })],
  });

  it('has the reference of the sentence it writes', () => {
    expect(one(heading('HDT', 'true'))?.arrives).toBe(true);
    expect(one(heading('HDT', 'magnetic'))?.whyNot?.link.broken).toBe('wrong-reference');
  });

  it('has none once the turn has lost it', () => {
    expect(one(heading('HDM', 'magnetic', ['reference']))?.whyNot?.says).toBe(
      'conv sends heading as HDM without saying which reference it has; magnetic is needed.',
    );
  });

  it('never comes faster than it came in', () => {
    const entry = one({
      units: {
        compass: bus({ pgn: 127250, everyMs: 1000 }),
        conv: {
          ports: {
            n2k: { protocol: 'nmea2000', hears: [127250] },
            out: { protocol: 'nmea0183', sends: [{ sentence: 'HDG', everyMs: 100 }] },
          },
          turns: [turn('n2k', 'out', 'heading')],
        },
        dial: dial('HDG'),
      },
      joins: { nav: ['compass.n2k', 'conv.n2k'], wire: ['conv.out', 'dial.in'] },
      needs: [need('heading', 'dial', { everyMs: 100 })],
    });
    expect(entry?.whyNot?.link).toEqual({ broken: 'too-slow', from: 'compass.n2k', to: 'conv.n2k' });
  });

  it('gives fuel and water their own numbers in one message', () => {
    const box: UnitSketch = {
      ports: {
        fuel: { protocol: 'analog', hears: ['fuel-level'] },
        water: { protocol: 'analog', hears: ['water-level'] },
        n2k: { protocol: 'nmea2000', sends: [127505] },
      },
      turns: [turn('fuel', 'n2k', 'fuel-level'), turn('water', 'n2k', 'water-level')],
      kit: {
        instances: [
          { port: 'n2k', reading: 'fuel-level', instance: 3 },
          { port: 'n2k', reading: 'water-level', instance: 1 },
        ],
      },
    };
    const sender = (reading: string): UnitSketch => ({ ports: { out: { protocol: 'analog', sends: [reading] } } });
    const entries = arriving(
      wired({
        units: {
          box,
          diesel: sender('fuel-level'),
          fresh: sender('water-level'),
          plotter: { ports: { n2k: { protocol: 'nmea2000', hears: [127505] } } },
        },
        joins: { a: ['diesel.out', 'box.fuel'], b: ['fresh.out', 'box.water'], nav: ['box.n2k', 'plotter.n2k'] },
        needs: [1, 3].flatMap((instance) => [
          need('fuel-level', 'plotter', { instance }),
          need('water-level', 'plotter', { instance }),
        ]),
      }),
    );
    expect(entries.filter(({ arrives }) => arrives).map((entry) => [entry.reading, entry.instance])).toEqual([
      ['fuel-level', 3],
      ['water-level', 1],
    ]);
  });

  it('does not come back to a port it has passed', () => {
    // The loop b -> relay -> a2 -> b would make rudder 0 into rudder 1, but it passes port b twice.
    const loop: UnitSketch = {
      ports: {
        a1: { protocol: 'nmea0183', hears: ['RSA'] },
        a2: { protocol: 'engine-can', hears: ['rudder'] },
        b: { protocol: 'nmea2000', sends: [127245] },
      },
      turns: [
        turn('a1', 'b', { reading: 'rudder', asInstance: 0 }),
        turn('a2', 'b', { reading: 'rudder', asInstance: 1 }),
      ],
    };
    const relay: UnitSketch = {
      ports: { n2k: { protocol: 'nmea2000', hears: [127245] }, can: { protocol: 'engine-can', sends: ['rudder'] } },
      turns: [turn('n2k', 'can', 'rudder')],
    };
    const sketch = (instance: number): Sketch => ({
      units: {
        sensor: { ports: { out: { protocol: 'nmea0183', sends: ['RSA'] } } },
        loop,
        relay,
        screen: { ports: { n2k: { protocol: 'nmea2000', hears: [127245] } } },
      },
      joins: {
        wire: ['sensor.out', 'loop.a1'],
        nav: ['loop.b', 'relay.n2k', 'screen.n2k'],
        can: ['relay.can', 'loop.a2'],
      },
      needs: [need('rudder', 'screen', { instance })],
    });
    expect(one(sketch(0))?.arrives).toBe(true);
    expect(one(sketch(1))?.arrives).toBe(false);
  });

  it('is not heard by a member that only talks on that wire', () => {
    const both: UnitSketch = { ports: { net: { protocol: 'single-wire', sends: ['rudder'], hears: ['rudder'] } } };
    const sketch: Sketch = {
      units: { first: { ports: { net: { protocol: 'single-wire', sends: ['rudder'] } } }, second: both },
      joins: { wire: ['first.net', 'second.net'] },
      needs: [need('rudder', 'second')],
    };
    const boat = wired(sketch);
    const onlyTalks = boat.joins.map((join) => ({
      ...join,
      members: join.members.map((member) => ({ ...member, as: 'talk' as const })),
    }));
    expect(arriving(boat)[0]?.backups).toEqual([['first.net', 'second.net']]);
    expect(arriving({ ...boat, joins: onlyTalks })[0]?.backups).toEqual([]);
  });
});
