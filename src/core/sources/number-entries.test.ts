import { expect, test } from 'vitest';
import type { Boat } from '../boat/boat-schema.ts';
import { type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import { sourcesOn } from './source-sketch.test-helper.ts';

const engine = (instance?: number): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends: [127488] } },
  ...(instance === undefined ? {} : { kit: { instances: [{ port: 'n2k', reading: 'engine', instance }] } }),
});

/** The boat with a unit standing so far to starboard. */
const standing = (boat: Boat, yM: Readonly<Record<string, number>>): Boat => {
  const [place] = boat.places;
  if (place === undefined) throw new Error('the boat of the tests has places');
  return {
    ...boat,
    places: [...boat.places, ...Object.entries(yM).map(([id, y]) => ({ ...place, id: `at-${id}`, yM: y }))],
    kit: boat.kit.map((unit) => (yM[unit.id] === undefined ? unit : { ...unit, place: `at-${unit.id}` })),
  };
};
const engines = (left?: number, right?: number): Boat =>
  standing(wired({ units: { left: engine(left), right: engine(right) }, joins: { nav: ['left.n2k', 'right.n2k'] } }), {
    left: -0.6,
    right: 0.6,
  });
const told = (boat: Boat) =>
  sourcesOn(boat).numbers.map(({ source, now, proposed, why }) => [source, now, proposed, why]);

test('two engines without numbers get 0 to port and 1 to starboard (practice-engine-numbers)', () => {
  expect(told(engines())).toEqual([
    ['left.n2k', undefined, 0, 'none'],
    ['right.n2k', undefined, 1, 'none'],
  ]);
});

test('two engines numbered the other way round are to be changed over', () => {
  expect(told(engines(1, 0))).toEqual([
    ['left.n2k', 1, 0, 'side'],
    ['right.n2k', 0, 1, 'side'],
  ]);
});

test('engines that are told apart and on no two sides keep their numbers', () => {
  const boat = engines(1, 0);
  expect(told(standing(boat, { left: 0, right: 0 })).map(([, , , why]) => why)).toEqual(['stands', 'stands']);
});

test('where two have one number the first from port keeps it', () => {
  expect(told(engines(0, 0))).toEqual([
    ['left.n2k', 0, 0, 'stands'],
    ['right.n2k', 0, 1, 'clash'],
  ]);
});

test('a tank above 5 gets a number that every display shows, and keeps its own where the owner has set the limit', () => {
  const tank: UnitSketch = {
    ports: { n2k: { protocol: 'nmea2000', sends: [127505] } },
    kit: { instances: [{ port: 'n2k', reading: 'fuel-level', instance: 9 }] },
  };
  const boat = wired({ units: { tank }, joins: { nav: ['tank.n2k'] } });
  const fuel = (one: Boat) => told(one).filter(([source]) => source === 'tank.n2k');
  expect(fuel(boat)[0]).toEqual(['tank.n2k', 9, 0, 'too-high']);
  const limits = { 'tank-number-most': { value: 12, reason: 'Ours show all.' } };
  expect(fuel({ ...boat, limits })[0]).toEqual(['tank.n2k', 9, 9, 'stands']);
});

test('the inputs of an adapter keep their numbers before single units do, for those are easier to change', () => {
  const sender: UnitSketch = { ports: { out: { protocol: 'analog', sends: ['fuel-level'] } } };
  const input = { protocol: 'analog', hears: ['fuel-level'] } as const;
  const box: UnitSketch = {
    ports: { 'in-1': input, 'in-2': input, n2k: { protocol: 'nmea2000', sends: [127505] } },
    turns: [0, 1].map((at) => ({
      fromPort: `in-${at + 1}`,
      toPort: 'n2k',
      carries: [{ reading: 'fuel-level' as const, asInstance: at }],
    })),
  };
  const alone: UnitSketch = {
    ports: { n2k: { protocol: 'nmea2000', sends: [{ reading: 'fuel-level', instance: 0 }] } },
  };
  const boat = wired({
    units: { a: alone, box, s1: sender, s2: sender },
    joins: { 'wire-1': ['s1.out', 'box.in-1'], 'wire-2': ['s2.out', 'box.in-2'], nav: ['a.n2k', 'box.n2k'] },
  });
  expect(sourcesOn(boat).numbers.map(({ source, proposed, setBy, why }) => [source, proposed, setBy, why])).toEqual([
    ['a.n2k', 2, 'unit', 'clash'],
    ['s1.out', 0, 'input', 'stands'],
    ['s2.out', 1, 'input', 'stands'],
  ]);
});

test('rudder 252 to 255 say none: no number is proposed for a rudder', () => {
  const rudder: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127245, instance: 252 }] } } };
  const boat = wired({ units: { a: rudder, b: rudder }, joins: { nav: ['a.n2k', 'b.n2k'] } });
  expect(sourcesOn(boat).numbers).toEqual([]);
});

test('of more tanks than there are low numbers the last keeps the number it has', () => {
  const tank = (instance: number): UnitSketch => ({
    ports: { n2k: { protocol: 'nmea2000', sends: [{ reading: 'fuel-level', instance }] } },
  });
  const units = Object.fromEntries([0, 1, 2, 3, 4, 5, 6].map((at) => [`t${at}`, tank(at)]));
  const boat = wired({ units, joins: { nav: Object.keys(units).map((id) => `${id}.n2k`) } });
  expect(told(boat).map(([, , proposed, why]) => [proposed, why])).toEqual(
    [0, 1, 2, 3, 4, 5, 6].map((at) => [at, 'stands']),
  );
});
