import { expect, test } from 'vitest';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { remoteBoat } from '../../remote/remote-boat.test-helper.ts';
import type { RemoteCommand, RemoteEntry, RemoteGate } from '../../remote-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { guestWifiNotApart } from './guest-wifi-not-apart.ts';
import { remoteRules } from './index.ts';

const plain: UnitSketch = { ports: { n2k: { protocol: 'nmea2000' } } };
const kit = ['box', 'gate', 'pilot', 'router', 'screen', 'sounder'];
const boat = wired({ units: Object.fromEntries(kit.map((id) => [id, plain])), joins: {} });

const entry = (own: Partial<RemoteEntry> = {}): RemoteEntry => ({
  kit: 'router',
  by: 'wifi',
  guests: true,
  network: [],
  gates: [],
  commands: [],
  writes: 'nothing',
  ...own,
});
const gate = (port: string, writes: RemoteGate['writes'] = 'may-write'): RemoteGate => ({
  port,
  onto: ['nav'],
  writes,
});
const order = (
  through: string,
  known: RemoteCommand['known'],
  what: RemoteCommand['what'] = 'pilot',
): RemoteCommand => ({
  what,
  at: 'pilot.n2k',
  by: [],
  through,
  known,
});
const of = (rule: string, ...remote: RemoteEntry[]) => told(remoteRules, `remote/${rule}`, { boat, plan: { remote } });

test('guests are told what they reach: units by name up to three, else the gates', () => {
  const said = (own: Partial<RemoteEntry>) => of('guest-wifi-not-apart', entry(own));
  expect([
    ...said({ network: ['screen'] }),
    ...said({ network: ['box', 'screen', 'sounder'] }),
    ...said({ network: ['box', 'gate', 'screen', 'sounder', 'pilot'], writes: 'unknown' }),
    ...said({ gates: [gate('gate.n2k'), gate('gate.out')], writes: 'may-write' }),
  ]).toEqual([
    'advice router: Guests are let on to the wifi of router, and from there screen is in reach. [ / ] Give guests a wifi of their own that leads to the internet and nowhere else; many routers have one to switch on.',
    'advice router: Guests are let on to the wifi of router, and from there box, screen, sounder are in reach. [ / ] Give guests a wifi of their own that leads to the internet and nowhere else; many routers have one to switch on.',
    'fault router: Guests are let on to the wifi of router, and from there box, gate, screen and 2 more are in reach. [ / ] Give guests a wifi of their own that leads to the internet and nowhere else; many routers have one to switch on.',
    'fault router: Guests are let on to the wifi of router, and from there gate is in reach. [ / ] Give guests a wifi of their own that leads to the internet and nowhere else; many routers have one to switch on.',
  ]);
  const own = {
    ...boat,
    sheets: boat.sheets.map((sheet) => ({ ...sheet, kind: sheet.id === 'sheet-box' ? 'tablet' : 'phone' })),
  };
  expect(
    findingsOf(guestWifiNotApart, { boat: own, plan: { remote: [entry({ network: ['box', 'screen'] })] } }),
  ).toEqual([]);
  const twoAirs = ['air', 'far'].map((port) => entry({ port: `router.${port}`, network: ['screen'] }));
  expect(
    findingsOf(guestWifiNotApart, { boat, plan: { remote: [...twoAirs, entry({ network: ['box'] })] } }).map(
      ({ id }) => id,
    ),
  ).toEqual([
    'remote/guest-wifi-not-apart:router',
    'remote/guest-wifi-not-apart:router:router.air',
    'remote/guest-wifi-not-apart:router:router.far',
  ]);
});

test('a pilot is told once by whom it is given a course, at its gravest, with every way in', () => {
  const ways = [
    entry({ commands: [order('gate', 'perhaps')] }),
    entry({ kit: 'screen', by: 'phone', commands: [order('gate', 'said'), order('box', 'perhaps', 'switching')] }),
    entry({ kit: 'box', by: 'cellular', commands: [order('gate', 'taken')] }),
    entry({ kit: 'nobody', by: 'satellite', commands: [order('screen', 'taken')] }),
  ];
  expect(of('pilot-from-a-phone', ...ways)).toEqual([
    'danger gate pilot: Pilot can be given a course by the wifi of router and screen and the link ashore of box: gate is said to pass on what comes in, and a pilot hears it. [ / ] Set it to listen only and enter that, or keep whoever is on that wifi away from it. A pilot obeys whoever speaks last: keep a hand near the helm while anybody works it from afar.',
    'fault pilot screen: Pilot can be given a course by the link ashore of nobody: screen is a converter of which nobody has said that it only listens, and a pilot hears it. [ / ] Look in its settings: set it to listen only and enter that. A pilot obeys whoever speaks last: keep a hand near the helm while anybody works it from afar.',
  ]);
  const [perhaps, said, taken] = ways as [RemoteEntry, RemoteEntry, RemoteEntry];
  for (const list of [
    [said, perhaps, taken],
    [taken, perhaps, said],
  ])
    expect(of('pilot-from-a-phone', ...list)).toEqual([expect.stringMatching(/^danger/)]);
  expect(of('pilot-from-a-phone', perhaps, taken)).toEqual([expect.stringMatching(/^fault/)]);
});

test('two or three givers of addresses are told by name', () => {
  const eth = { protocol: 'ethernet', role: 'both' } as const;
  const gives = { sheet: { givesAddresses: true } } as const;
  const said = (givers: string[], router: { from: string; also?: string; together: string[][] }) => {
    const own = remoteBoat(
      {
        units: {
          router: { ports: { 'lan-1': eth, 'lan-2': eth, wan: eth, aux: eth }, together: router.together },
          switch: { ports: { a: eth, b: eth, c: eth, d: eth }, together: [['a', 'b', 'c', 'd']] },
          radar: { ports: { 'lan-2': eth } },
          sonar: { ports: { eth } },
        },
        joins: {
          one: [`router.${router.from}`, 'switch.a'],
          two: ['switch.b', 'radar.lan-2'],
          three: ['switch.c', 'sonar.eth'],
          ...(router.also === undefined ? {} : { four: [`router.${router.also}`, 'switch.d'] }),
        },
      },
      Object.fromEntries(givers.map((id) => [id, gives])),
    );
    const joins = joinsOf(indexBoat(own), 1).map((join) => ({ ...join, lines: [] }));
    return told(remoteRules, 'remote/two-address-givers', { boat: own, plan: { joins } });
  };
  const lan = { from: 'lan-1', together: [['lan-1', 'lan-2']] };
  expect(said(['router', 'radar'], lan)).toEqual([
    'fault radar router: Radar and router both give addresses on one network. A unit takes the first that is offered: some get two, some the same one, and a screen that worked yesterday sees no radar today. [2 givers / 1] Let one of them give addresses and switch that off in the other; where a maker’s own radar network wants to give its own, keep it on a switch apart.',
  ]);
  expect(said(['router', 'radar', 'sonar'], lan)).toEqual([
    'fault radar router sonar: Radar and router and sonar all give addresses on one network. A unit takes the first that is offered: some get two, some the same one, and a screen that worked yesterday sees no radar today. [3 givers / 1] Let one of them give addresses and switch that off in the others; where a maker’s own radar network wants to give its own, keep it on a switch apart.',
  ]);
  // of several groups of sockets the one that is on this network counts
  expect(
    said(['router', 'radar'], {
      from: 'lan-1',
      together: [
        ['lan-1', 'lan-2'],
        ['wan', 'aux'],
      ],
    }),
  ).toHaveLength(1);
  expect(said(['router', 'radar'], { ...lan, also: 'wan' })).toHaveLength(1);
  expect(said(['router', 'radar'], { ...lan, from: 'wan' })).toEqual([]);
});

test('a converter is told with the ways in by which it is reached, and with its own alone', () => {
  const ways = (writes: RemoteGate['writes']) => [
    entry({ gates: [gate('gate.n2k', writes), gate('gate.out', writes)] }),
    entry({
      kit: 'screen',
      by: 'phone',
      gates: [gate('gate.n2k', writes), gate('box.n2k', writes)],
      commands: [order('box', 'taken', 'switching')],
    }),
    entry({ kit: 'sounder', by: 'satellite', gates: [gate('pilot.n2k', writes)] }),
  ];
  expect(of('writes-unknown', ...ways('unknown'))).toEqual([
    'doubt box: Box is in reach of screen, and nobody has said whether it only listens: it is taken as able to write to whatever it is joined to. [ / ] Look in its settings: set it to listen only, or enter that it may write and who needs that.',
    'doubt gate: Gate is in reach of the wifi of router and screen, and nobody has said whether it only listens: it is taken as able to write to whatever it is joined to. [ / ] Look in its settings: set it to listen only, or enter that it may write and who needs that.',
    'doubt pilot: Pilot is in reach of the link ashore of sounder, and nobody has said whether it only listens: it is taken as able to write to whatever it is joined to. [ / ] Look in its settings: set it to listen only, or enter that it may write and who needs that.',
  ]);
  expect(of('writes-without-need', ...ways('may-write'))).toEqual([
    'advice gate: Gate is in reach of the wifi of router and screen and writes to what it is joined to; nobody has said who needs that. [ / ] Set it to listen only and enter that; where somebody does need it to write, enter that it must.',
    'advice pilot: Pilot is in reach of the link ashore of sounder and writes to what it is joined to; nobody has said who needs that. [ / ] Set it to listen only and enter that; where somebody does need it to write, enter that it must.',
  ]);
});
