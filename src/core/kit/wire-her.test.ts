import { expect, test } from 'vitest';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { plan } from '../plan.ts';
import { boatFromPattern } from '../starting/boat-from-pattern.ts';
import { boatWith, emptyBoat } from './sloop.test-helper.ts';
import { wireHer } from './wire-her.ts';

const twelve = [
  'multifunction-display-10',
  'instrument-4',
  'gnss-antenna-bus',
  'heading-sensor-bus',
  'sensor-dst-bus',
  'ais-class-b',
  'vhf-whip-1m',
  'gnss-antenna-coax',
  'vhf-dsc-bus',
  'vhf-whip-2m',
  'radar-dome-24',
  'battery-shunt-bus',
] as const;

const wired = (boat: Boat): Boat =>
  applyEdits(startHistory(boat), wireHer(boat, plan(boat, new Map())), 'Wire her so.').boat;

test('twelve units put aboard by pick and place are wired and fed by one press, and everything arrives', () => {
  const boat = wired(boatWith(emptyBoat(), twelve));
  const made = plan(boat, new Map());
  expect(made.readings.filter(({ arrives }) => !arrives)).toEqual([]);
  expect(made.readings.length).toBeGreaterThan(20);
  expect(made.loads.filter(({ source }) => source.by === 'nothing')).toEqual([]);
  expect(made.proposal).toBeUndefined();
  expect(made.shopping.length).toBeGreaterThan(20);
  expect(made.findings.filter(({ level }) => level === 'danger')).toEqual([]);
  // nothing is left to wire
  expect(wireHer(boat, made)).toEqual([]);
}, 20_000);

test.each([
  ['sloop-deck-stepped', 9.5],
  ['pilothouse-motorboat', 11],
  ['steel-workboat', 15],
] as const)(
  'a %s of %s m gets a shopping list from nothing but picks and places',
  (pattern, lengthM) => {
    const boat = wired(boatWith(boatFromPattern({ pattern, name: 'Knot', lengthM }), twelve));
    const made = plan(boat, new Map());
    expect(made.readings.filter(({ arrives }) => !arrives)).toEqual([]);
    expect(made.loads.filter(({ source }) => source.by === 'nothing')).toEqual([]);
    expect(made.shopping.length).toBeGreaterThan(30);
    expect(made.findings.filter(({ level }) => level === 'danger')).toEqual([]);
  },
  20_000,
);

test('where there are two buses a person says which one a loose unit is for', () => {
  const boat = boatWith(emptyBoat(), ['alarm-buzzer-bus']);
  const two: Boat = { ...boat, buses: [...boat.buses, { id: 'second', name: 'Second', protocol: 'nmea2000' }] };
  const joinsOf = (of: Boat) => wireHer(of, plan(of, new Map())).filter(({ edit }) => edit === 'join-bus');
  expect(joinsOf(boat)).toEqual([{ edit: 'join-bus', params: { port: 'alarm.n2k', bus: 'backbone' } }]);
  expect(joinsOf(two)).toEqual([]);
});

test('a breaker that waits for the radio is taken, and one for the lights is not', () => {
  const empty = emptyBoat();
  const withCircuits: Boat = {
    ...empty,
    supply: {
      ...empty.supply,
      panels: empty.supply.panels.map((panel) => ({
        ...panel,
        circuits: [
          { id: 'lights', name: 'lights', ratingA: 10, kind: 'breaker', feeds: [] },
          { id: 'sets', name: 'Radio', ratingA: 15, kind: 'breaker', feeds: [] },
        ],
      })),
    },
  };
  const boat = wired(boatWith(withCircuits, ['vhf-dsc-bus']));
  const feeds = boat.supply.panels.flatMap(({ circuits }) => circuits.map((circuit) => [circuit.id, ...circuit.feeds]));
  expect(feeds).toContainEqual(['sets', 'vhf-radio.dc']);
  expect(feeds).toContainEqual(['lights']);
});

test('a panel whose places were counted gets no more circuits than it has places', () => {
  const empty = emptyBoat();
  const full: Boat = {
    ...empty,
    supply: { ...empty.supply, panels: empty.supply.panels.map((panel) => ({ ...panel, freeWays: 1 })) },
  };
  const calls = wireHer(boatWith(full, twelve), plan(boatWith(full, twelve), new Map()));
  expect(calls.filter(({ edit }) => edit === 'add-circuit')).toHaveLength(1);
});
