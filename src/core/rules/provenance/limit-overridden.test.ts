import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { limitOverridden } from './limit-overridden.ts';

const found = (limits: Record<string, { value: number; reason: string }>) =>
  findingsOf(limitOverridden, { boat: aBoat().with({ limits }).boat });

test('a boat with the usual limits passes', () => {
  expect(findingsOf(limitOverridden)).toEqual([]);
});

test('a limit of the owner’s own is advice that gives both figures and the reason', () => {
  expect(found({ 'nmea2000-one-drop': { value: 4, reason: 'old tees' } })).toMatchObject([
    {
      id: 'provenance/limit-overridden:nmea2000-one-drop',
      level: 'advice',
      measured: { value: 4, unit: 'm' },
      limit: { value: 6, unit: 'm' },
      says: expect.stringContaining('old tees'),
    },
  ]);
});

test('a limit that nothing asks for is a doubt', () => {
  expect(found({ 'nmea2000-one-dorp': { value: 4, reason: 'x' } })).toMatchObject([{ level: 'doubt' }]);
  expect(found({ constructor: { value: 4, reason: 'x' } })).toMatchObject([{ level: 'doubt' }]);
});

test('a resistance no cable can have is left to the rule that calls it a fault', () => {
  expect(found({ 'nmea2000-ohm-light': { value: 0.0057, reason: 'handbook' } })).toEqual([]);
  expect(found({ 'nmea2000-ohm-light': { value: 0.053, reason: 'data sheet' } })).toHaveLength(1);
});
