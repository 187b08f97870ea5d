import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { linkTooLong } from './link-too-long.ts';

const line = (longestM: number): LineEntry => ({
  id: 'ethernet:display.net~gnss.net',
  kind: 'ethernet',
  from: 'display.net',
  to: 'gnss.net',
  places: ['helm', 'locker'],
  ways: ['locker-helm'],
  lengthM: longestM - 1,
  longestM,
  guessed: false,
});

test('a cable that is 100 m at its longest passes; one of 100.5 m does not', () => {
  expect(findingsOf(linkTooLong, { plan: { lines: [line(100)] } })).toEqual([]);
  expect(findingsOf(linkTooLong, { plan: { lines: [line(100.5)] } })).toMatchObject([
    { level: 'fault', about: ['display', 'gnss'], measured: { value: 100.5, unit: 'm' }, limit: { value: 100 } },
  ]);
});

test('the tighter limit of an owner counts', () => {
  const { boat } = aBoat().with({
    limits: { 'ethernet-link': { value: 50, reason: 'as the maker of the radar asks' } },
  });
  expect(findingsOf(linkTooLong, { boat, plan: { lines: [line(60)] } })).toHaveLength(1);
});
