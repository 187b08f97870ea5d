import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fuseOverCable } from './fuse-over-cable.ts';

const fused = (ratingA: number) =>
  aBoat().change((boat) => {
    for (const circuit of boat.supply.panels.flatMap((panel) => panel.circuits)) circuit.ratingA = ratingA;
  }).boat;

test('3 A on light cable passes', () => {
  expect(findingsOf(fuseOverCable, { boat: fused(3) })).toEqual([]);
});

test('7.5 A on light cable is a fault against 3 A', () => {
  expect(findingsOf(fuseOverCable, { boat: fused(7.5) })).toMatchObject([
    { level: 'fault', about: ['bus-circuit', 'nav'], measured: { value: 7.5 }, limit: { value: 3, unit: 'A' } },
  ]);
});

test('heavy cable carries 8 A', () => {
  expect(findingsOf(fuseOverCable, { boat: fused(8), bus: { grade: 'heavy' } })).toEqual([]);
});
