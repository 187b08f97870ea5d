import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { indexBoat, portOf } from '../../src/core/boat/boat-index.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { gannet, gannetTable } from './gannet.ts';

const boat = gannet();
const table = gannetTable();
const index = indexBoat(boat);

describe('Gannet', () => {
  test('the file in examples is the one her tables give', () => {
    const file = readFileSync(new URL('../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8');
    expect(file).toBe(writeBoat(boat));
  });

  test('reads as a boat file', () => {
    expect(readBoat(JSON.stringify(boat))).toEqual(boat);
  });

  test('has 32 places, 33 ways, 44 units, 35 kinds of sheet and 56 needs', () => {
    const counts = [boat.places, boat.ways, boat.kit, boat.sheets, boat.needs].map((list) => list.length);
    expect(counts).toEqual([32, 33, 44, 35, 56]);
  });

  test('every join ends at ports of its kind that may talk or listen so', () => {
    for (const join of boat.joins) {
      for (const { kit, port, as } of join.members) {
        const there = portOf(index, `${kit}.${port}`);
        expect([join.id, kit, there?.protocol]).toEqual([join.id, kit, join.kind]);
        expect([as, 'both']).toContain(there?.role);
      }
    }
  });

  test('15 devices load the bus with LEN 35, each as her table has it', () => {
    const onNav = boat.joins.find((join) => join.bus === 'nav')?.members.map(({ kit }) => kit) ?? [];
    const lenOf = (kit: string): number | undefined => portOf(index, `${kit}.n2k`)?.len;
    const rows = table.kit.filter((row) => row.buses.includes('nav'));
    expect(new Map(onNav.map((kit) => [kit, lenOf(kit)]))).toEqual(new Map(rows.map((row) => [row.id, row.len])));
    expect(onNav.reduce((sum, kit) => sum + (lenOf(kit) ?? 0), 0)).toBe(35);
    expect(onNav).toHaveLength(15);
  });

  test('every unit with its own supply hangs on a circuit', () => {
    const fed = new Set(boat.supply.panels.flatMap((panel) => panel.circuits.flatMap((circuit) => circuit.feeds)));
    const own = boat.kit.filter((unit) => index.sheetOf.get(unit.id)?.ports.some((port) => port.protocol === 'dc'));
    expect(own.map((unit) => unit.id).filter((id) => !fed.has(`${id}.dc`))).toEqual([]);
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
    for (const unit of boat.kit.filter(({ changes }) => changes !== undefined)) {
      for (const change of unit.changes ?? []) {
        const one = indexBoat({ ...boat, kit: [{ ...unit, changes: [change] }] });
        expect([change.path, one.sheetOf.get(unit.id)]).not.toEqual([change.path, bare.sheetOf.get(unit.id)]);
      }
    }
  });

  test('new units stand farther from both compasses than their sheets ask', () => {
    const at = (kit: string) => index.places.get(index.kit.get(kit)?.place ?? '');
    const apart = (a: string, b: string): number => {
      const [p, q] = [at(a), at(b)];
      return p === undefined || q === undefined ? 0 : Math.hypot(p.xM - q.xM, p.yM - q.yM, p.zM - q.zM);
    };
    for (const [a, b, metres] of [...table.distances.antennas, ...table.distances.compass]) {
      expect(apart(a, b)).toBeCloseTo(metres, 2);
    }
    for (const unit of boat.kit.filter(({ fate }) => fate !== 'goes')) {
      const asked = index.sheetOf.get(unit.id)?.compassSafe?.valueM ?? 0;
      for (const compass of ['compass-helm', 'compass-fly']) {
        if (unit.id !== compass) expect([unit.id, apart(unit.id, compass) > asked]).toEqual([unit.id, true]);
      }
    }
  });
});
