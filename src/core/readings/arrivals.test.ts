import { describe, expect, it } from 'vitest';
import type { Need } from '../boat/boat-schema.ts';
import { arriving, need, type PortSketch, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

const sounder = (sentence: string, more: Partial<UnitSketch['ports'][string]> = {}): UnitSketch => ({
  ports: { out: { protocol: 'nmea0183', sends: [{ sentence, everyMs: 1000 }], ...more } },
});
const inward = (...hears: string[]): UnitSketch => ({
  ports: {
    in: { protocol: 'nmea0183', hears },
    n2k: { protocol: 'nmea2000', sends: [128267, 127245, 127250, 127488], hears: [] },
  },
  turns: [turn('in', 'n2k', 'depth', 'rudder', 'heading', 'engine')],
});
const outward = (...sends: (string | { sentence: string; everyMs: number })[]): UnitSketch => ({
  ports: {
    n2k: { protocol: 'nmea2000', sends: [], hears: [128267, 127245, 127250, 127488] },
    out: { protocol: 'nmea0183', sends },
  },
  turns: [turn('n2k', 'out', 'depth', 'rudder', 'heading', 'engine')],
});
const screen: UnitSketch = {
  ports: { n2k: { protocol: 'nmea2000', sends: [], hears: [128267, 127245, 127250, 127488, 129025] } },
};
const old = (...hears: string[]): UnitSketch => ({ ports: { in: { protocol: 'nmea0183', hears } } });

const one = (sketch: Sketch, phase?: number) => {
  const [entry, ...more] = arriving(wired(sketch), phase);
  expect(more).toEqual([]);
  return entry;
};

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

describe('a reading does not arrive', () => {
  it('when nothing aboard sends it', () => {
    const entry = one({ units: { screen }, joins: { nav: ['screen.n2k'] }, needs: [need('depth', 'screen')] });
    expect(entry).toMatchObject({ arrives: false, by: [], backups: [] });
    expect(entry?.whyNot).toEqual({ link: { broken: 'no-source' }, says: 'Nothing aboard sends depth.', cures: [] });
  });

  it('when the converter that would pass it on is given nothing', () => {
    const entry = one({
      units: { conv: inward('DPT'), screen },
      joins: { nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
    expect(entry?.whyNot).toMatchObject({ link: { broken: 'no-source', to: 'conv.in' } });
    expect(entry?.whyNot?.says).toContain('conv would pass it on, but nothing joined to it gives it');
  });

  it('with the keel offset behind DBT, which carries none (planted fault 20)', () => {
    const entry = one({
      units: { sounder: sounder('DBT'), conv: inward('DBT', 'DPT'), screen },
      joins: { wire: ['sounder.out', 'conv.in'], nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen', { withOffset: true, reference: 'keel' })],
    });
    expect(entry?.whyNot).toEqual({
      link: { broken: 'no-offset', from: 'sounder.out', to: 'conv.in' },
      says: 'sounder sends depth as DBT, which leaves the offset behind; screen needs it.',
      cures: ['Let sounder send DPT in place of DBT, if it can.'],
    });
  });

  it('through a converter that works the other way round (planted fault 30)', () => {
    const conv: UnitSketch = {
      ports: {
        in: { protocol: 'nmea0183', hears: ['DPT'] },
        n2k: { protocol: 'nmea2000', sends: [], hears: [128267] },
      },
      turns: [turn('n2k', 'in', 'depth')],
    };
    const entry = one({
      units: { sounder: sounder('DPT'), conv, screen },
      joins: { wire: ['sounder.out', 'conv.in'], nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
    expect(entry?.whyNot).toMatchObject({ link: { broken: 'not-carried', from: 'conv.in', to: 'conv.n2k' } });
    expect(entry?.whyNot?.says).toContain('carries only the other way');
  });

  it('from a talker at 38400 to a listener at 4800 (planted fault 36)', () => {
    const sketch = (baud: number): Sketch => ({
      units: { sounder: sounder('DPT', { baud }), radio: old('DPT') },
      joins: { wire: ['sounder.out', 'radio.in'] },
      needs: [need('depth', 'radio')],
    });
    expect(one(sketch(38400))?.whyNot).toEqual({
      link: { broken: 'baud-differs', from: 'sounder.out', to: 'radio.in' },
      says: 'sounder sends at 38400 baud, radio listens at 4800.',
      cures: ['Set both to the same baud.'],
    });
    expect(one(sketch(4800))?.arrives).toBe(true);
  });

  it('from a computer port into a pair, joined bare, which is luck; a pair and a single wire have a right way', () => {
    const sketch = (talks: UnitSketch['ports'][string]['line'], listens: typeof talks): Sketch => ({
      units: {
        computer: sounder('DPT', talks === undefined ? {} : { line: talks }),
        radio: {
          ports: { in: { protocol: 'nmea0183', hears: ['DPT'], ...(listens === undefined ? {} : { line: listens }) } },
        },
      },
      joins: { wire: ['computer.out', 'radio.in'] },
      needs: [need('depth', 'radio')],
    });
    expect(one(sketch('rs232', 'differential'))?.whyNot).toEqual({
      link: { broken: 'line-differs', from: 'computer.out', to: 'radio.in' },
      says: 'computer sends by RS-232 and radio listens on a pair of wires; joined bare, it is luck if anything is heard.',
      cures: ['Put an isolator or a converter between computer and radio.'],
    });
    expect(one(sketch('single-ended', 'rs232'))?.whyNot?.link.broken).toBe('line-differs');
    expect(one(sketch('differential', 'single-ended'))?.arrives).toBe(true);
    expect(one(sketch('rs232', 'rs232'))?.arrives).toBe(true);
    expect(one(sketch('rs232', undefined))?.arrives).toBe(true);
  });

  it('over a wire whose ends are joined the wrong way round', () => {
    const both: PortSketch = { protocol: 'nmea0183', sends: ['DPT'], hears: ['DPT'] };
    const boat = wired({
      units: { sounder: sounder('DPT', { role: 'both' }), radio: { ports: { io: { ...both, sends: [] } } } },
      joins: { wire: ['sounder.out', 'radio.io'] },
      needs: [need('depth', 'radio')],
    });
    const whyWith = (...roles: ('talk' | 'listen')[]) =>
      arriving({
        ...boat,
        joins: boat.joins.map((join) => ({
          ...join,
          members: join.members.map((member, at) => ({ ...member, as: roles[at] ?? member.as })),
        })),
      })[0]?.whyNot;
    expect(whyWith('talk', 'listen')).toBeUndefined();
    expect(whyWith('talk', 'talk')).toEqual({
      link: { broken: 'direction-differs', from: 'sounder.out', to: 'radio.io' },
      says: 'sounder should give depth to radio, but port io of radio is joined to talk.',
      cures: ['Turn the join round: sounder.out talks, radio.io listens.'],
    });
    expect(whyWith('listen', 'talk')?.says).toBe(
      'sounder should give depth to radio, but its port out is joined to listen and port io of radio is joined to talk.',
    );
  });

  it('into a port of the bus that can only talk', () => {
    const deaf: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', role: 'talk', hears: [128267] } } };
    const entry = one({
      units: { depth: { ports: { n2k: { protocol: 'nmea2000', sends: [128267] } } }, deaf },
      joins: { nav: ['depth.n2k', 'deaf.n2k'] },
      needs: [need('depth', 'deaf')],
    });
    expect(entry?.whyNot).toEqual({
      link: { broken: 'direction-differs', from: 'depth.n2k', to: 'deaf.n2k' },
      says: 'depth should give depth to deaf, but port n2k of deaf can only talk.',
      cures: ['Join them by ports that work this way round, or put a converter between.'],
    });
  });

  it('as the second rudder behind 0183, which brings no instance (planted fault 26, MS-86)', () => {
    const rudder = (instance: number): UnitSketch => ({
      ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127245, instance }] } },
    });
    const entry = one({
      units: { first: rudder(0), second: rudder(1), conv: outward('RSA'), dial: old('RSA') },
      joins: { nav: ['first.n2k', 'second.n2k', 'conv.n2k'], wire: ['conv.out', 'dial.in'] },
      needs: [need('rudder', 'dial', { instance: 1 })],
    });
    expect(entry?.whyNot).toMatchObject({ link: { broken: 'wrong-instance', from: 'conv.out', to: 'dial.in' } });
  });

  it('as an engine through 0183, which has no sentence for it (planted fault 27, MS-86)', () => {
    const entry = one({
      units: {
        gateway: { ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127488, instance: 0 }] } } },
        conv: outward('RPM', 'DPT'),
        dial: old('RPM'),
      },
      joins: { nav: ['gateway.n2k', 'conv.n2k'], wire: ['conv.out', 'dial.in'] },
      needs: [need('engine', 'dial')],
    });
    expect(entry?.whyNot).toMatchObject({ link: { broken: 'not-carried', from: 'conv.n2k', to: 'conv.out' } });
  });

  it('ten times a second once a converter gives it once a second (planted fault 22)', () => {
    const compass: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127250, everyMs: 100 }] } } };
    const sketch = (conv: UnitSketch): Sketch => ({
      units: { compass, conv, pilot: old('HDG') },
      joins: { nav: ['compass.n2k', 'conv.n2k'], wire: ['conv.out', 'pilot.in'] },
      needs: [need('heading', 'pilot', { everyMs: 100 })],
    });
    expect(one(sketch(outward('HDG')))?.arrives).toBe(true);
    expect(one(sketch(outward({ sentence: 'HDG', everyMs: 1000 })))?.whyNot).toEqual({
      link: { broken: 'too-slow', from: 'conv.out', to: 'pilot.in' },
      says: 'conv sends heading as HDG every 1000 ms; pilot needs it every 100 ms.',
      cures: [],
    });
    const losing = { ...outward('HDG'), turns: [turn('n2k', 'out', { reading: 'heading', loses: ['rate'] })] };
    expect(one(sketch(losing))?.whyNot?.link.broken).toBe('too-slow');
  });

  it('when the screen takes another sentence than the one sent', () => {
    const entry = one({
      units: { sounder: sounder('DBT'), radio: old('DPT') },
      joins: { wire: ['sounder.out', 'radio.in'] },
      needs: [need('depth', 'radio')],
    });
    expect(entry?.whyNot).toEqual({
      link: { broken: 'not-heard', from: 'sounder.out', to: 'radio.in' },
      says: 'sounder sends depth as DBT, and radio hears it only as DPT.',
      cures: ['Let sounder send DPT, if it can.'],
    });
  });

  it('when a converter does not list it, named rather than the other ears on the bus', () => {
    const entry = one({
      units: {
        depth: { ports: { n2k: { protocol: 'nmea2000', sends: [128267] } } },
        other: { ports: { n2k: { protocol: 'nmea2000', sends: [], hears: [129025] } } },
        conv: { ...outward('RSA'), turns: [turn('n2k', 'out', 'rudder')] },
        pilot: old('DPT'),
      },
      joins: { nav: ['depth.n2k', 'other.n2k', 'conv.n2k'], wire: ['conv.out', 'pilot.in'] },
      needs: [need('depth', 'pilot')],
    });
    expect(entry?.whyNot).toEqual({
      link: { broken: 'not-carried', from: 'conv.n2k', to: 'conv.out' },
      says: 'conv hears depth as PGN 128267 at its port n2k, but does not carry it to its port out.',
      cures: [],
    });
  });

  it('when a port that would take it is not joined', () => {
    const entry = one({
      units: { sounder: sounder('DPT'), conv: inward('DPT'), screen },
      joins: { nav: ['conv.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    });
    expect(entry?.whyNot).toEqual({
      link: { broken: 'not-joined', from: 'sounder.out', to: 'conv.in' },
      says: 'sounder gives depth, but its port out is not joined to port in of conv.',
      cures: ['Join sounder.out to conv.in.'],
    });
  });

  it('when two makers or two unconfirmed generations meet on one wire', () => {
    const sketch = (own: string, other: string, confirmed = false): Sketch => ({
      units: {
        computer: { ports: { net: { protocol: 'single-wire', dialect: own, sends: ['pilot-state'] } } },
        head: { ports: { net: { protocol: 'single-wire', dialect: other, hears: ['pilot-state'] } } },
      },
      joins: { wire: ['computer.net', 'head.net'] },
      needs: [need('pilot-state', 'head')],
      ...(confirmed ? { confirmed: ['wire'] } : {}),
    });
    expect(one(sketch('maker-a/1', 'maker-a/1'))?.arrives).toBe(true);
    expect(one(sketch('maker-a/1', 'maker-b/1', true))?.whyNot?.link.broken).toBe('dialect-differs');
    for (const other of ['maker-a/2', 'maker-a/unknown']) {
      expect(one(sketch('maker-a/1', other))?.whyNot?.link).toEqual({
        broken: 'generation-unknown',
        from: 'computer.net',
        to: 'head.net',
      });
      expect(one(sketch('maker-a/1', other, true))?.arrives).toBe(true);
    }
    expect(one(sketch('maker-a/unknown', 'maker-a/unknown'))?.arrives).toBe(false);
    expect(one(sketch('maker-a/1', 'maker-a/unknown'))?.whyNot).toMatchObject({
      says: "computer speaks generation 1 of a maker's language and head a generation of it that nobody has looked up; it is not confirmed that they understand each other.",
      cures: [
        'Look up one manual page, of computer or of head: whether the two work together. Enter the answer on the join.',
      ],
    });
  });

  it('behind a switch in the language of the unit that wrote it, which is named', () => {
    const eth = (dialect: string, sends: string[], hears: string[]): UnitSketch => ({
      ports: { eth: { protocol: 'ethernet', dialect, sends, hears } },
    });
    const port = { protocol: 'ethernet', sends: [], hears: [] } as const;
    const entry = one({
      units: {
        radar: eth('maker-a/1', ['radar-picture'], []),
        switch: { ports: { p1: port, p2: port }, together: [['p1', 'p2']] },
        screen: eth('maker-b/1', [], ['radar-picture']),
      },
      joins: { a: ['radar.eth', 'switch.p1'], b: ['switch.p2', 'screen.eth'] },
      needs: [need('radar-picture', 'screen')],
    });
    expect(entry?.whyNot).toMatchObject({
      link: { broken: 'dialect-differs', from: 'switch.p2', to: 'screen.eth' },
      says: "radar and screen do not speak the same maker's language.",
    });
  });

  it('when the screen can take it only in another reference than the one needed', () => {
    const plotter: UnitSketch = {
      ports: { n2k: { protocol: 'nmea2000', hears: [{ pgn: 127250, wants: { reference: 'true' } }] } },
    };
    const entry = one({
      units: { compass: { ports: { n2k: { protocol: 'nmea2000', sends: [127250] } } }, plotter },
      joins: { nav: ['compass.n2k', 'plotter.n2k'] },
      needs: [need('heading', 'plotter', { reference: 'magnetic' })],
    });
    expect(entry?.whyNot).toMatchObject({
      link: { broken: 'wrong-reference', to: 'plotter.n2k' },
      says: 'plotter takes heading only as true, and it is needed as magnetic.',
    });
  });

  it('when what the screen itself wants is stricter than the need', () => {
    const pilot: UnitSketch = {
      ports: { n2k: { protocol: 'nmea2000', hears: [{ pgn: 127250, wants: { everyMs: 100 } }] } },
    };
    const entry = one({
      units: { compass: { ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127250, everyMs: 1000 }] } } }, pilot },
      joins: { nav: ['compass.n2k', 'pilot.n2k'] },
      needs: [need('heading', 'pilot', { everyMs: 1000 })],
    });
    expect(entry?.whyNot?.says).toBe('compass sends heading as PGN 127250 every 1000 ms; pilot needs it every 100 ms.');
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
