import { expect, test } from 'vitest';
import { aBoat } from '../../../core/boat/a-boat.test-helper.ts';
import type { JoinEntry } from '../../../core/plan-shape.ts';
import { aFinding, aPlan } from '../../../papers/lists/a-plan.test-helper.ts';
import { notesOf } from '../margin/notes.ts';
import { unitRows } from './unit-rows.ts';

const { boat } = aBoat();
const [first, second, third] = boat.kit;
const ids = [first?.id ?? '', second?.id ?? '', third?.id ?? ''] as const;

const join = (over: Partial<JoinEntry>): JoinEntry => ({
  id: 'j',
  kind: 'nmea0183',
  from: 'file',
  lines: [],
  members: ids.slice(0, 2).map((kit) => ({ kit, port: 'p', as: 'both' })),
  ...over,
});

test('the list tells in words what the drawing shows: place, what it is joined to, and the notes', () => {
  const plan = aPlan({
    joins: [join({}), join({ id: 'k', kind: 'nmea2000', bus: boat.buses[0]?.id ?? '' })],
    findings: [aFinding('f', { about: [`${ids[0]}.p`] })],
  });
  const rows = unitRows({ boat, plan, notes: notesOf(plan, new Map()), numbers: new Map([[ids[0], 1]]) });
  const place = boat.places.find((one) => one.id === first?.place)?.name;
  expect(rows[0]).toMatchObject({ id: ids[0], name: first?.name, place, balloon: 1 });
  expect(rows[0]?.joined).toEqual([`NMEA 0183 with ${second?.name}`, boat.buses[0]?.name]);
  expect(rows[0]?.notes).toHaveLength(1);
});

test('units with a balloon come first, in the order of their numbers, and none is left out', () => {
  const numbers = new Map([
    [ids[1], 2],
    [ids[2], 1],
  ]);
  const rows = unitRows({ boat, plan: aPlan(), notes: [], numbers });
  expect(rows.slice(0, 2).map((row) => row.id)).toEqual([ids[2], ids[1]]);
  expect(rows).toHaveLength(boat.kit.length);
});
