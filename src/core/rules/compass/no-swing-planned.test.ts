import { expect, test } from 'vitest';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import { compassFindings } from './compass-case.test-helper.ts';
import { noSwingPlanned } from './no-swing-planned.ts';

test('a new display under its distance is a doubt while no swing is planned', () => {
  expect(compassFindings(noSwingPlanned, { unit: { safeM: 0.8, tooNear: true } })).toMatchObject([
    { level: 'doubt', about: ['card', 'display'], measured: { value: 0.5 }, limit: { value: 0.8, unit: 'm' } },
  ]);
});

test('one that keeps its distance within a metre is advice', () => {
  expect(compassFindings(noSwingPlanned)).toMatchObject([{ level: 'advice' }]);
});

test('nothing is said where a swing is planned, or nothing new comes near', () => {
  const planned = aCompassBoat().unit('card', { site: { swing: 'planned' } }).boat;
  expect(compassFindings(noSwingPlanned, { boat: planned })).toEqual([]);
  const old = aCompassBoat().unit('display', { fate: 'stays' }).boat;
  expect(compassFindings(noSwingPlanned, { boat: old })).toEqual([]);
});
