import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { planLines } from '../plan-lines.ts';
import { otherRoutes } from './other-routes.ts';

const index = indexBoat(aBoat().boat);
const { lines } = planLines({ index, buses: [], joins: joinsOf(index, 1) });
const radio = 'pair:converter.wires~radio.wires';

test('the pair through the conduit could go round by the mast, and is as much longer as those ways are', () => {
  const line = lines.find(({ id }) => id === radio);
  const other = otherRoutes({ index, lines }).get(radio);
  expect(line?.ways).toEqual(['locker-helm']);
  expect(other?.ways).toEqual(['locker-mast', 'helm-mast']);
  const metres = (id: string): number => index.ways.get(id)?.length.valueM ?? 0;
  const more = metres('locker-mast') + metres('helm-mast') - metres('locker-helm');
  expect(other?.lengthM).toBeCloseTo((line?.lengthM ?? 0) + more, 9);
});

test('a kept line and a line with one way only have no other', () => {
  const kept = lines.map((line) => ({ ...line, kept: ['old'] }));
  expect(otherRoutes({ index, lines: kept }).size).toBe(0);
  const ways = index.boat.ways.filter(({ id }) => id !== 'helm-mast');
  const lone = indexBoat({ ...index.boat, ways });
  expect(otherRoutes({ index: lone, lines }).has(radio)).toBe(false);
});
