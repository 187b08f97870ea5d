import { describe, expect, it } from 'vitest';
import { inward, old, one, outward, screen, sounder } from './arrival-sketches.test-helper.ts';
import { arriving, need, type PortSketch, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

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
