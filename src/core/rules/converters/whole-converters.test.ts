import { expect, test } from 'vitest';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat, Join } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { type PortSketch, type Sketch, turn, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { convertersRules } from './index.ts';

const on = (rule: string, boat: Boat) => {
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return told(convertersRules, `converters/${rule}`, { boat, plan: { joins } });
};
const bus: PortSketch = { protocol: 'nmea2000', sends: [], hears: [] };
const talks: PortSketch = { protocol: 'nmea0183', sends: [] };
const listens: PortSketch = { protocol: 'nmea0183', hears: [] };

test('a round is told with what goes round in it: out of a bus and back into it, by another unit', () => {
  const away: UnitSketch = {
    ports: { n2k: bus, out: talks },
    turns: [turn('n2k', 'out', 'position', 'depth', 'heading')],
  };
  const back: UnitSketch = { ports: { in: listens, n2k: bus }, turns: [turn('in', 'n2k', 'depth', 'position')] };
  const said = (units: Sketch['units'], joins: Sketch['joins']) => on('messages-go-round', wired({ units, joins }));
  expect(said({ away, back }, { nav: ['away.n2k', 'back.n2k'], line: ['away.out', 'back.in'] })).toEqual([
    'fault away back nav: Away carries position, depth out of nav, and back carries it back in. It goes round for ever, and everybody hears it twice. [ / ] Leave one path in each direction: switch these readings off in one of the two.',
  ]);
  // into another bus, and from a line that nobody feeds
  expect(said({ away, back }, { nav: ['away.n2k'], ship: ['back.n2k'], line: ['away.out', 'back.in'] })).toEqual([]);
  const plain: UnitSketch = { ports: { out: talks, in: listens } };
  const apart = { nav: ['away.n2k', 'back.n2k'], line: ['away.out', 'plain.in'], other: ['plain.out', 'back.in'] };
  expect(said({ away, back, plain }, apart)).toEqual([]);
  // a unit does not send back what it hears of itself
  const both: UnitSketch = {
    ports: { n2k: bus, out: talks, in: listens },
    turns: [turn('n2k', 'out', 'depth'), turn('in', 'n2k', 'depth')],
  };
  expect(said({ both }, { nav: ['both.n2k'], line: ['both.out', 'both.in'] })).toEqual([]);
});

test('an input that leads nowhere is told of lines that carry readings, and of a turn that carries nothing', () => {
  const said = (protocol: PortSketch['protocol'], turns: UnitSketch['turns'] = []) => {
    const boat = wired({
      units: {
        source: { ports: { out: { protocol, sends: [] } } },
        box: { ports: { in: { protocol, hears: [] }, n2k: bus }, turns },
      },
      joins: { line: ['source.out', 'box.in'] },
    });
    return on('input-leads-nowhere', {
      ...boat,
      sheets: boat.sheets.map((sheet) => ({ ...sheet, kind: 'converter' })),
    });
  };
  expect(said('nmea0183')).toEqual([
    'fault box.in line: Box is wired at its port in, but carries nothing from there to anywhere. It turns the other way round, or another of its ports is meant. [ / ] Join the port that carries this way, or choose a converter that goes both ways.',
  ]);
  expect(
    [said('single-wire'), said('analog'), said('nmea0183', [turn('in', 'n2k')])].map(({ length }) => length),
  ).toEqual([1, 1, 1]);
  expect([said('video'), said('nmea0183', [turn('in', 'n2k', 'depth')])]).toEqual([[], []]);
});

test('an output is told what it is given, as full from its limit on and as too full from all it carries on', () => {
  const said = (everyMs: number, inputs = ['a', 'b'], own: Partial<Boat> = {}) => {
    const talker: UnitSketch = {
      ports: { out: { protocol: 'nmea0183', baud: 4800, sends: [{ sentence: 'HDG', everyMs }] } },
    };
    const ports = Object.fromEntries(inputs.map((id) => [`in-${id}`, { ...listens, baud: 4800 }]));
    const boat = wired({
      units: {
        ...Object.fromEntries(inputs.map((id) => [id, talker])),
        mux: {
          ports: { ...ports, out: { ...talks, baud: 4800 } },
          turns: inputs.map((id) => turn(`in-${id}`, 'out', 'heading')),
        },
        ear: { ports: { in: listens } },
      },
      joins: {
        ...Object.fromEntries(inputs.map((id) => [id, [`${id}.out`, `mux.in-${id}`]])),
        out: ['mux.out', 'ear.in'],
      },
    });
    return on('output-overflows', { ...boat, ...own });
  };
  expect(said(90)).toEqual([
    'fault mux.out: The inputs of mux bring 556 characters a second together; its output carries 480. That is 116 %, and sentences are dropped. [115.74074074074073 % / 80] Set the output to 38400 baud if its listeners can, or let fewer sentences through.',
  ]);
  expect(said(120)).toEqual([
    'doubt mux.out: The inputs of mux bring 417 characters a second together; its output carries 480. That is 87 %, and when all speak at once sentences may be dropped. [86.80555555555557 % / 80] Set the output to 38400 baud if its listeners can, or let fewer sentences through.',
  ]);
  expect([said(200), said(50, ['a'])]).toEqual([[], []]);
  // at the limit itself it holds
  const limits = (value: number) => ({ limits: { 'nmea0183-load': { value, reason: 'tried' } } });
  const share = Number(/\[([\d.]+) %/.exec(said(120)[0] ?? '')?.[1]);
  const withLimit = (value: number): number => said(120, ['a', 'b'], limits(value)).length;
  expect([withLimit(share), withLimit(share - 0.001)]).toEqual([0, 1]);
});

test('languages of two makers are told where they are joined plug to plug, not where all share the air', () => {
  const spoken = (protocol: PortSketch['protocol']) => {
    const speaks = (dialect: string): UnitSketch => ({ ports: { port: { protocol, dialect } } });
    const units = { one: speaks('maker-a/1'), other: speaks('maker-b/1') };
    return on('languages-differ', wired({ units, joins: { line: ['one.port', 'other.port'] } }));
  };
  expect(spoken('single-wire')).toEqual([
    'fault line one other: One speaks a language of maker A, other one of maker B. Joined plug to plug they fit and say nothing to each other. [ / ] Put an active converter between them that knows both, usually by way of the bus, or choose a unit of the same language.',
  ]);
  expect([spoken('wifi'), spoken('nmea2000')]).toEqual([[], []]);
});

test('a unit with one wire only is told while it is joined to nobody', () => {
  const said = (ports: UnitSketch['ports'], joins: Sketch['joins'] = {}, ...more: Join[]) => {
    const boat = wired({
      units: {
        head: { ports, kit: { fate: 'comes' } },
        plain: { ports: { n2k: bus, net: { protocol: 'single-wire' } } },
      },
      joins,
    });
    return on('single-wire-as-bus', { ...boat, joins: [...boat.joins, ...more] });
  };
  const net = { net: { protocol: 'single-wire' } } as const;
  const alone: Join = {
    id: 'alone',
    kind: 'single-wire',
    members: [{ kit: 'head', port: 'net', as: 'talk' }],
    hold: 'fixed',
  };
  expect(said(net, {}, alone)).toEqual([
    'doubt head: Head has no port for the bus, only one for a maker’s single wire, and is joined to nothing. The plugs look alike; the languages are not the same. [ / ] Choose a unit with a port for the bus, or add an active converter from that wire to the bus and join the two.',
  ]);
  expect(said({ ...net, feed: { protocol: 'dc' } })).toHaveLength(1);
  expect([
    said({ feed: { protocol: 'dc' } }),
    said({ ...net, n2k: bus }),
    said(net, { wire: ['head.net', 'plain.net'] }),
  ]).toEqual([[], [], []]);
});
