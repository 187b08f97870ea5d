import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Place } from '../boat/boat-schema.ts';
import { dripLoops } from './drip-loops.ts';

const exposures: readonly Place['exposure'][] = ['dry', 'damp', 'spray', 'weather'];
const tern = aBoat().boat;
const index = indexBoat({
  ...tern,
  places: exposures.map((exposure) => ({ ...(tern.places[0] ?? ([] as never)), id: exposure, exposure })),
});

test('a line from an antenna on deck loops at the antenna and where it comes in', () => {
  expect(dripLoops(index, { places: ['weather', 'dry', 'damp'] })).toEqual(['weather', 'dry']);
});

test('a line that stays below needs none', () => {
  expect(dripLoops(index, { places: ['dry', 'damp', 'dry'] })).toEqual([]);
});

test('a line that goes out and in again loops on both sides', () => {
  expect(dripLoops(index, { places: ['dry', 'spray', 'damp'] })).toEqual(['dry', 'damp']);
});
