import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { indexBoat, portOf } from '../../src/core/boat/boat-index.ts';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import type { Table } from './table.ts';

interface DemoBoat {
  /** her folder and file in examples */
  readonly id: string;
  readonly boat: Boat;
  readonly table: Table;
  /** loads that no circuit feeds, and why that is right is said in her file */
  readonly unfed?: readonly string[];
}

/** How far two units are apart, metres, by the places they stand at. */
const apartIn =
  (boat: Boat) =>
  (a: string, b: string): number => {
    const { places, kit } = indexBoat(boat);
    const at = (unit: string) => places.get(kit.get(unit)?.place ?? '');
    const [p, q] = [at(a), at(b)];
    return p === undefined || q === undefined ? 0 : Math.hypot(p.xM - q.xM, p.yM - q.yM, p.zM - q.zM);
  };

/** Tests that hold for every boat made from tables. */
export const testDemoBoat = ({ id, boat, table, unfed = [] }: DemoBoat): void => {
  const index = indexBoat(boat);

  test('the file in examples is the one her tables give', () => {
    const file = readFileSync(new URL(`../../examples/${id}/${id}.boat.json`, import.meta.url), 'utf8');
    expect(file).toBe(writeBoat(boat));
  });

  test('reads as a boat file', () => {
    expect(readBoat(JSON.stringify(boat))).toEqual(boat);
  });

  test('every join ends at ports of its kind that may talk or listen so', () => {
    for (const join of boat.joins) {
      for (const { kit, port, as } of join.members) {
        const there = portOf(index, `${kit}.${port}`);
        expect([join.id, kit, there?.protocol]).toEqual([join.id, kit, join.kind]);
        if (join.kind !== 'nmea2000') expect([as, 'both']).toContain(there?.role);
      }
    }
  });

  test('each device loads its bus with the LEN of her table', () => {
    for (const { bus, members } of boat.joins.filter((join) => join.bus !== undefined)) {
      const rows = table.kit.filter((row) => row.buses.includes(bus ?? ''));
      const lens = members.map(({ kit, port }) => [kit, portOf(index, `${kit}.${port}`)?.len] as const);
      expect(new Map(lens)).toEqual(new Map(rows.map((row) => [row.id, row.len])));
    }
  });

  test('every unit with its own supply hangs on a circuit', () => {
    const fed = new Set(boat.supply.panels.flatMap((panel) => panel.circuits.flatMap((circuit) => circuit.feeds)));
    const takes = (unit: string): boolean =>
      index.sheetOf.get(unit)?.ports.some((port) => port.protocol === 'dc' && port.role !== 'talk') === true;
    const own = boat.kit.map((unit) => unit.id).filter(takes);
    expect(own.filter((unit) => !fed.has(`${unit}.dc`))).toEqual(unfed);
  });

  test('every cable that serves something serves a join or a circuit of hers', () => {
    const served = new Set([
      ...boat.joins.map((join) => join.id),
      ...boat.supply.panels.flatMap((panel) => panel.circuits.map((circuit) => circuit.id)),
    ]);
    expect(boat.cables.filter(({ serves }) => serves !== undefined && !served.has(serves))).toEqual([]);
  });

  test('her changes each take hold of her sheets', () => {
    const bare = indexBoat({ ...boat, kit: boat.kit.map(({ changes: _changes, ...unit }) => unit) });
    for (const unit of boat.kit) {
      for (const change of unit.changes ?? []) {
        const one = indexBoat({ ...boat, kit: [{ ...unit, changes: [change] }] });
        expect([change.path, one.sheetOf.get(unit.id)]).not.toEqual([change.path, bare.sheetOf.get(unit.id)]);
      }
    }
  });

  test('units that stay or come stand farther from every compass than their sheets ask', () => {
    const apart = apartIn(boat);
    for (const [a, b, metres] of [...table.distances.antennas, ...table.distances.compass]) {
      expect(apart(a, b)).toBeCloseTo(metres, 2);
    }
    const staying = boat.kit.filter(({ fate }) => fate !== 'goes');
    const compasses = staying.filter(({ sheet }) => sheet === 'compass-magnetic');
    for (const unit of staying) {
      const asked = index.sheetOf.get(unit.id)?.compassSafe?.valueM ?? 0;
      for (const compass of compasses) {
        if (unit.id !== compass.id) expect([unit.id, apart(unit.id, compass.id) > asked]).toEqual([unit.id, true]);
      }
    }
  });
};
