import { expect, test } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { lostNumbers } from './lost-numbers.ts';
import { refitOf } from './refit.ts';
import { arriving, need, type Sketch, turn, type UnitSketch, wired } from './wired.test-helper.ts';

const found = (sketch: Sketch) => {
  const index = indexBoat(wired(sketch));
  return lostNumbers(refitOf(index, (phase) => joinsOf(index, phase)).reachesIn(1));
};
const sender = (pgn: number, instance: number): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn, instance }] } },
});
const rudders = { port: sender(127245, 0), starboard: sender(127245, 1) };
const toPair = (carries: Parameters<typeof turn>[2]): UnitSketch => ({
  ports: {
    n2k: { protocol: 'nmea2000', hears: [127245, 127488, 127505] },
    out: { protocol: 'nmea0183', sends: ['RSA'] },
  },
  turns: [turn('n2k', 'out', carries)],
});
const dial: UnitSketch = { ports: { in: { protocol: 'nmea0183', hears: ['RSA'] } } };
const joins = { nav: ['port.n2k', 'starboard.n2k', 'converter.n2k'], pair: ['converter.out', 'dial.in'] };

test('MS-86: of two rudders, two engines and three tanks a one-way 0183 output gives one rudder and nothing else', () => {
  const others = {
    engines: sender(127488, 0),
    'engines-b': sender(127488, 1),
    tanks: sender(127505, 0),
    'tanks-b': sender(127505, 1),
    'tanks-c': sender(127505, 2),
  };
  const sketch: Sketch = {
    units: { ...rudders, ...others, converter: toPair('rudder'), dial },
    joins: { ...joins, nav: [...joins.nav, ...Object.keys(others).map((id) => `${id}.n2k`)] },
    needs: [need('rudder', 'dial'), need('engine', 'dial'), need('fuel-level', 'dial')],
  };
  expect(arriving(wired(sketch)).map(({ reading, arrives }) => [reading, arrives])).toEqual([
    ['engine', false],
    ['fuel-level', false],
    ['rudder', true],
  ]);
  expect(found(sketch)).toEqual([
    {
      reading: 'rudder',
      from: 'converter.n2k',
      to: 'converter.out',
      numbers: [0, 1],
      passed: 1,
      listeners: ['dial'],
    },
  ]);
});

test('one rudder is not lost, with a number or without', () => {
  expect(
    found({
      units: { ...rudders, converter: toPair('rudder'), dial },
      joins: { ...joins, nav: ['port.n2k', 'converter.n2k'] },
    }),
  ).toEqual([]);
});

test('a converter that carries the first rudder only lets nothing of the second out', () => {
  expect(
    found({ units: { ...rudders, converter: toPair({ reading: 'rudder', instance: 0 }), dial }, joins }),
  ).toMatchObject([{ numbers: [0, 1], passed: 1, listeners: ['dial'] }]);
});

test('a unit that hears both on the bus as well loses nothing', () => {
  const both: UnitSketch = {
    ports: { in: { protocol: 'nmea0183', hears: ['RSA'] }, n2k: { protocol: 'nmea2000', hears: [127245] } },
  };
  expect(
    found({
      units: { ...rudders, converter: toPair('rudder'), dial: both },
      joins: { ...joins, nav: [...joins.nav, 'dial.n2k'] },
    }),
  ).toEqual([]);
});

const bridge = (carry: Parameters<typeof turn>[2]): Sketch => ({
  units: {
    house: sender(127508, 0),
    start: sender(127508, 1),
    bridge: {
      ports: { a: { protocol: 'nmea2000', hears: [127508] }, b: { protocol: 'nmea2000', sends: [127508] } },
      turns: [turn('a', 'b', carry)],
    },
    screen: { ports: { n2k: { protocol: 'nmea2000', hears: [127508] } } },
  },
  joins: { nav: ['house.n2k', 'start.n2k', 'bridge.a'], ship: ['bridge.b', 'screen.n2k'] },
});

test('a bridge between two buses keeps the numbers, unless it loses them', () => {
  expect(found(bridge('battery'))).toEqual([]);
  expect(found(bridge({ reading: 'battery', loses: ['instance'] }))).toMatchObject([
    { reading: 'battery', numbers: [0, 1], passed: 1, listeners: ['screen'] },
  ]);
});

test('nobody behind the converter means nothing is lost on anybody', () => {
  const { screen: _, ...units } = bridge('battery').units;
  expect(found({ units, joins: { nav: ['house.n2k', 'start.n2k', 'bridge.a'], ship: ['bridge.b'] } })).toEqual([]);
});

test('two batteries from one monitor lose one behind a converter that drops numbers', () => {
  expect(
    found({
      units: {
        gateway: {
          ports: {
            n2k: {
              protocol: 'nmea2000',
              sends: [
                { pgn: 127508, instance: 0 },
                { pgn: 127508, instance: 1 },
              ],
            },
          },
        },
        bridge: {
          ports: { a: { protocol: 'nmea2000', hears: [127508] }, b: { protocol: 'nmea2000', sends: [127508] } },
          turns: [turn('a', 'b', { reading: 'battery', loses: ['instance'] })],
        },
        screen: { ports: { n2k: { protocol: 'nmea2000', hears: [127508] } } },
      },
      joins: { nav: ['gateway.n2k', 'bridge.a'], ship: ['bridge.b', 'screen.n2k'] },
    }),
  ).toMatchObject([{ numbers: [0, 1], passed: 1 }]);
});
