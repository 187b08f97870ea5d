import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byCodeUnit } from '../../../src/core/boat/ids.ts';
import { readBoat } from '../../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../../src/core/boat/write-boat.ts';
import { wreckBase } from './base.ts';
import { faults, wreck } from './index.ts';

const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted).sort((a, b) => byCodeUnit(JSON.stringify(a), JSON.stringify(b)));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort()
      .map(([key, part]) => [key, sorted(part)]),
  );
};

describe('the Wreck', () => {
  test('the file in examples is the one her base and her faults give', () => {
    const file = readFileSync(new URL('../../../examples/wreck/wreck.boat.json', import.meta.url), 'utf8');
    expect(file).toBe(writeBoat(wreck()));
  });

  test('is a boat file with every fault, with each fault alone and with none', () => {
    const boats = [wreck(), wreckBase, ...faults.map((fault) => fault.plant(wreckBase))];
    for (const boat of boats) expect(readBoat(JSON.stringify(boat))).toEqual(boat);
  });

  test('each rule has one fault, and each fault changes her', () => {
    expect(new Set(faults.map((fault) => fault.rule)).size).toBe(faults.length);
    for (const fault of faults) expect([fault.rule, fault.plant(wreckBase)]).not.toEqual([fault.rule, wreckBase]);
  });

  test('a fault speaks of things that are aboard', () => {
    const boat = wreck();
    const circuits = boat.supply.panels.flatMap((panel) => panel.circuits);
    const { places, ways, cables, sheets, kit, buses, joins, openings = [] } = boat;
    const parts = [places, ways, cables, sheets, kit, buses, joins, openings];
    const { banks, panels, dcdc, chargers = [] } = boat.supply;
    const named = [...parts.flat(), ...banks, ...panels, ...circuits, ...dcdc, ...chargers].map(({ id }) => id);
    const ordered = [...(boat.orders ?? []).map(({ item }) => item), ...Object.keys(boat.pins?.pieces ?? {})];
    const settled = (boat.work?.jobs ?? []).map(({ job }) => job);
    const ports = new Set([
      ...named,
      ...ordered,
      ...settled,
      ...circuits.flatMap(({ feeds }) => feeds),
      ...boat.kit.map(({ id }) => `${id}.dc`),
      ...boat.joins.flatMap(({ members }) => members.map((m) => `${m.kit}.${m.port}`)),
    ]);
    for (const fault of faults)
      expect([fault.rule, fault.about.filter((id) => !ports.has(id))]).toEqual([fault.rule, []]);
  });

  test('faults may be planted in any order', () => {
    const whole = sorted(wreck());
    fc.assert(
      fc.property(fc.shuffledSubarray([...faults], { minLength: faults.length }), (order) => {
        const boat = order.reduce((sofar, fault) => fault.plant(sofar), wreckBase);
        expect(sorted(boat)).toEqual(whole);
      }),
      { numRuns: 20 },
    );
  });
});
