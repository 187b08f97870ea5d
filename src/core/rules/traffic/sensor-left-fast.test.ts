import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { SentEntry } from '../../traffic-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { sensorLeftFast } from './sensor-left-fast.ts';

const attitude = (everyMs: number, more: Partial<SentEntry> = {}): SentEntry => ({
  pgn: 127257,
  count: 1,
  everyMs,
  rate: 'sheet',
  usualMs: 1000,
  frames: 1,
  framesPerS: 1000 / everyMs,
  worstPct: 64 / everyMs,
  ...more,
});

const found = (messages: readonly SentEntry[], boat = aBoat().boat) => {
  const sender = { port: 'compass.n2k', framesPerS: 1, averagePct: 1, worstPct: 1, messages: [...messages] };
  const nav = { bus: 'nav', units: 1, averagePct: 1, worstPct: 1, shipsPct: 0, senders: [sender], bursts: [] };
  return findingsOf(sensorLeftFast, { boat, plan: { traffic: { waters: 'quiet', buses: [nav], lines: [] } } });
};

test('five times as often as usual is advice, just under it is none', () => {
  expect(found([attitude(201)])).toEqual([]);
  expect(found([attitude(200)])).toMatchObject([
    { level: 'advice', about: ['compass.n2k'], measured: { value: 5 }, limit: { value: 5 } },
  ]);
});

test('a unit is told of once, with all it sends so fast', () => {
  const [finding, ...others] = found([attitude(100), attitude(50, { pgn: 127258 }), attitude(1000)]);
  expect(others).toEqual([]);
  expect(finding?.measured?.value).toBe(20);
  expect(finding?.says).toMatch(/\(127258\) every 50 ms.*\(127257\) every 100 ms/);
});

test('what a bridge repeats, what has no usual rate, and other ships are nobody’s slip here', () => {
  const { usualMs: _, ...makersOwn } = attitude(10, { pgn: 65280 });
  expect(found([attitude(50, { rate: 'passed' }), attitude(50, { rate: 'waters' }), makersOwn])).toEqual([]);
});

test('the owner’s own mark counts', () => {
  const boat = aBoat().with({ limits: { 'nmea2000-times-usual': { value: 20, reason: 'a fast pilot' } } }).boat;
  expect(found([attitude(100)], boat)).toEqual([]);
});
