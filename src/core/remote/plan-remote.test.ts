import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turn } from '../readings/wired.test-helper.ts';
import { gatewayAndPilot, remoteBoat, remoteOf } from './remote-boat.test-helper.ts';

const wifi = { protocol: 'wifi', role: 'both' } as const;
const eth = { protocol: 'ethernet', role: 'both' } as const;
const steering = { kind: 'pilot-computer', steers: true } as const;

describe('a gateway from wifi to the bus', () => {
  const entryWith = (said: object) =>
    remoteOf(remoteBoat(gatewayAndPilot, { gate: { kind: 'gateway', ...said }, pilot: steering }))[0];

  test('is taken as able to write, and reaches the pilot', () => {
    expect(entryWith({})).toEqual({
      kit: 'gate',
      port: 'air',
      by: 'wifi',
      guests: false,
      network: [],
      gates: [{ port: 'gate.n2k', onto: ['nav'], writes: 'unknown' }],
      commands: [
        {
          what: 'pilot',
          at: 'pilot.n2k',
          by: ['gate.air', 'gate.n2k', 'pilot.n2k'],
          through: 'gate',
          known: 'taken',
        },
      ],
      writes: 'unknown',
    });
  });

  test('that is said only to listen reaches nothing, by its owner or by its sheet', () => {
    for (const said of [{ owner: { writes: 'listen-only' } }, { sheet: { writes: 'listen-only' } }]) {
      expect(entryWith(said)).toMatchObject({ commands: [], writes: 'listen-only' });
    }
  });

  test('goes by what its owner says before its sheet, but not where the owner does not know', () => {
    const sheet = { writes: 'listen-only' } as const;
    expect(entryWith({ sheet, owner: { writes: 'may-write' } })?.commands[0]?.known).toBe('said');
    expect(entryWith({ sheet, owner: { writes: 'unknown' } })?.commands).toEqual([]);
  });

  test('whose bus port only listens writes nothing, unless somebody has seen it write', () => {
    const { units, joins } = gatewayAndPilot;
    const gate = {
      ports: { air: wifi, n2k: { protocol: 'nmea2000', role: 'listen', hears: [127250] } },
    } as const;
    const listening = { units: { ...units, gate }, joins };
    const seen = (owner: object) =>
      remoteOf(remoteBoat(listening, { gate: { kind: 'gateway', owner }, pilot: steering }))[0];
    expect(seen({})).toMatchObject({ commands: [], writes: 'listen-only' });
    expect(seen({ writes: 'may-write' })?.commands).toMatchObject([{ at: 'pilot.n2k', known: 'said' }]);
  });
});

describe('from the network on', () => {
  const sketch = {
    units: {
      router: {
        ports: { air: wifi, guests: wifi, lan: eth, wan: eth },
        together: [['air', 'lan']],
      },
      modem: { ports: { eth } },
      hub: { ports: { p1: eth, p2: eth }, together: [['p1', 'p2']] },
      screen: {
        ports: { eth, n2k: { protocol: 'nmea2000', role: 'both', sends: [129284], hears: [129284] } },
      },
      mux: {
        ports: {
          n2k: { protocol: 'nmea2000', role: 'both', hears: [129284] },
          out: { protocol: 'nmea0183', sends: ['RMB'] },
        },
        turns: [turn('n2k', 'out', 'route', 'cross-track')],
      },
      pilot: { ports: { in: { protocol: 'nmea0183', hears: ['RMB'] } } },
    },
    joins: {
      'to-shore': ['modem.eth', 'router.wan'],
      'to-hub': ['router.lan', 'hub.p1'],
      'to-screen': ['hub.p2', 'screen.eth'],
      nav: ['screen.n2k', 'mux.n2k'],
      steer: ['mux.out', 'pilot.in'],
    },
  } as const;
  const boatWith = (screen: object = {}) =>
    remoteBoat(sketch as never, {
      router: { kind: 'router', owner: { guests: 'guests' } },
      modem: { kind: 'cellular-hub' },
      screen: { kind: 'display', ...screen },
      mux: { kind: 'multiplexer' },
      pilot: { kind: 'pilot', steers: true },
    });

  test('a screen that a phone may work sends its route through a converter to the pilot', () => {
    const inside = remoteOf(boatWith()).find(({ port }) => port === 'air');
    expect(inside?.network).toEqual(['hub', 'screen']);
    expect(inside?.commands).toEqual([
      {
        what: 'pilot',
        at: 'pilot.in',
        by: [
          'router.air',
          'router.lan',
          'hub.p1',
          'hub.p2',
          'screen.eth',
          'screen.n2k',
          'mux.n2k',
          'mux.out',
          'pilot.in',
        ],
        through: 'screen',
        known: 'perhaps',
      },
    ]);
    expect(inside?.writes).toBe('unknown');
  });

  test('a screen said only to listen holds it up there', () => {
    const inside = remoteOf(boatWith({ owner: { writes: 'listen-only' } })).find(({ port }) => port === 'air');
    expect(inside).toMatchObject({ commands: [], writes: 'listen-only' });
  });

  test('guests and the shore are apart where the router parts them', () => {
    const others = remoteOf(boatWith()).filter(({ port }) => port !== 'air');
    expect(others).toMatchObject([
      { kit: 'modem', by: 'cellular', network: ['router'], commands: [], writes: 'nothing' },
      { kit: 'router', port: 'guests', guests: true, network: [], commands: [], writes: 'nothing' },
    ]);
  });
});

test('a switch module takes the message that throws switches; one that reports them commands nothing', () => {
  const reached = (pgn: number) =>
    remoteOf(
      remoteBoat(
        {
          units: {
            ...gatewayAndPilot.units,
            lamps: { ports: { n2k: { protocol: 'nmea2000', role: 'both', hears: [pgn] } } },
          },
          joins: { nav: ['gate.n2k', 'lamps.n2k'] },
        },
        { gate: { kind: 'gateway' } },
      ),
    )[0]?.commands.map(({ what, at }) => [what, at]);
  expect(reached(127_502)).toEqual([['switching', 'lamps.n2k']]);
  expect(reached(127_501)).toEqual([]);
});

test('an engine is reached only where something carries towards it', () => {
  const reached = (from: string, to: string) =>
    remoteOf(
      remoteBoat(
        {
          units: {
            ...gatewayAndPilot.units,
            box: {
              ports: {
                n2k: { protocol: 'nmea2000', role: 'both', hears: [127488], sends: [127488] },
                can: { protocol: 'engine-can', role: 'both', hears: ['engine'], sends: ['engine'] },
              },
              turns: [turn(from, to, 'engine')],
            },
          },
          joins: { nav: ['gate.n2k', 'box.n2k'] },
        },
        { gate: { kind: 'gateway' }, box: { kind: 'gateway' } },
      ),
    )[0]?.commands.map(({ at }) => at);
  expect(reached('n2k', 'can')).toEqual(['box.can']);
  expect(reached('can', 'n2k')).toEqual([]);
});

test('a wifi that only talks lets nothing in', () => {
  const { units, joins } = gatewayAndPilot;
  const gate = {
    ports: { air: { protocol: 'wifi', role: 'talk' }, n2k: { protocol: 'nmea2000', role: 'both', hears: [127250] } },
  } as const;
  const boat = remoteBoat({ units: { ...units, gate }, joins }, { gate: { kind: 'gateway' }, pilot: steering });
  expect(remoteOf(boat)).toMatchObject([{ commands: [], writes: 'nothing' }]);
});

test('a phone that is on the wifi of a gateway reaches what the wifi does', () => {
  const { units, joins } = gatewayAndPilot;
  const boat = remoteBoat(
    { units: { ...units, tablet: { ports: { air: wifi } } }, joins: { ...joins, radio: ['gate.air', 'tablet.air'] } },
    { gate: { kind: 'gateway' }, pilot: steering, tablet: { kind: 'tablet' } },
  );
  const phone = remoteOf(boat).find(({ by }) => by === 'phone');
  expect(phone).toMatchObject({ kit: 'tablet', network: ['gate'], commands: [{ at: 'pilot.n2k' }] });
});

describe('on any chain of gateways between wifi and pilot', () => {
  /** Whether a pilot is commanded by a plain walk: every box on the way must pass orders inward. */
  const plainly = (boxes: readonly { listens: boolean; carries: boolean }[]): boolean =>
    boxes.every(({ listens, carries }, at) => (at === 0 ? !listens : carries));

  test('the pilot is reached exactly where the first may write and every other carries on', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ listens: fc.boolean(), carries: fc.boolean() }), { minLength: 1, maxLength: 4 }),
        (boxes) => {
          const pair = (at: number) => [`b${at}.out`, at + 1 < boxes.length ? `b${at + 1}.in` : 'pilot.in'];
          const sketch = {
            units: {
              ...Object.fromEntries(
                boxes.map(({ carries }, at) => [
                  `b${at}`,
                  {
                    ports: {
                      in: at === 0 ? wifi : ({ protocol: 'nmea0183', hears: ['RMB'] } as const),
                      out: { protocol: 'nmea0183', sends: ['RMB'] } as const,
                    },
                    turns: at > 0 && carries ? [turn('in', 'out', 'route')] : [],
                  },
                ]),
              ),
              pilot: { ports: { in: { protocol: 'nmea0183', hears: ['RMB'] } as const } },
            },
            joins: Object.fromEntries(boxes.map((_, at) => [`j${at}`, pair(at)])),
          };
          const said = Object.fromEntries(
            boxes.map(({ listens }, at) => [
              `b${at}`,
              { kind: 'gateway', ...(listens ? { owner: { writes: 'listen-only' as const } } : {}) },
            ]),
          );
          const [entry] = remoteOf(remoteBoat(sketch, { ...said, pilot: steering }));
          return (entry?.commands.length === 1) === plainly(boxes);
        },
      ),
    );
  });
});
