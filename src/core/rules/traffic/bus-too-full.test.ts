import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { busTooFull } from './bus-too-full.ts';

const levels = (worstPct: number) =>
  findingsOf(busTooFull, { bus: { traffic: { averagePct: worstPct * 0.886, worstPct } } }).map(({ level }) => level);

test('a bus is noted above 30 %, doubted above 50 % and at fault above 70 % of its worst load', () => {
  expect([30, 31, 50, 51, 70, 71].map(levels)).toEqual([[], ['advice'], ['advice'], ['doubt'], ['doubt'], ['fault']]);
});

test('the owner’s own mark counts', () => {
  const boat = aBoat().with({ limits: { 'nmea2000-load-stop': { value: 40, reason: 'slow units aboard' } } }).boat;
  const traffic = { averagePct: 38, worstPct: 43 };
  expect(findingsOf(busTooFull, { boat, bus: { traffic } })).toMatchObject([
    { level: 'fault', about: ['nav'], limit: { value: 40, source: 'set by the owner: slow units aboard' } },
  ]);
});
