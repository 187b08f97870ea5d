import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { keptCableUntested } from './kept-cable-untested.ts';

const withCable = (condition: Cable['condition']) =>
  aBoat().with({
    cables: [
      {
        id: 'old-pair',
        kind: 'pair',
        from: { place: 'locker' },
        to: { place: 'helm' },
        ways: ['locker-helm'],
        length: { valueM: 3, how: 'taped' },
        diameterMm: 6,
        condition,
        fate: 'stays',
      },
    ],
  }).boat;
const line = (kept?: string[]): LineEntry => ({
  id: 'pair:converter.wires~radio.wires',
  kind: 'pair',
  from: 'converter.wires',
  to: 'radio.wires',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 3,
  longestM: 3.2,
  guessed: false,
  ...(kept === undefined ? {} : { kept }),
});
const levels = (condition: Cable['condition'], kept?: string[]) =>
  findingsOf(keptCableUntested, { boat: withCable(condition), plan: { lines: [line(kept)] } }).map(
    ({ level, about }) => [level, ...about],
  );

test('a good cable that the plan uses passes', () => {
  expect(levels('good', ['old-pair'])).toEqual([]);
});

test('an untested or doubtful one is a doubt, a bad one a fault', () => {
  expect(levels('untested', ['old-pair'])).toEqual([['doubt', 'old-pair']]);
  expect(levels('doubtful', ['old-pair'])).toEqual([['doubt', 'old-pair']]);
  expect(levels('bad', ['old-pair'])).toEqual([['fault', 'old-pair']]);
});

test('an untested cable that no line uses is not spoken of', () => {
  expect(levels('untested')).toEqual([]);
});

test('a pair of 3 m that could be 3.19 m costs 7.98 EUR to replace; in a currency without its price the length alone is said', () => {
  const cureIn = (currency?: string): string | undefined => {
    const boat = withCable('untested');
    const prices = { trunkPerM: 1, dropPerM: 1, tee: 1, terminator: 1, feed: 1, feedLeadPerM: 1, hour: 1 };
    return findingsOf(keptCableUntested, {
      boat: currency === undefined ? boat : { ...boat, prices: { currency, ...prices } },
      plan: { lines: [line(['old-pair'])] },
    })[0]?.cure;
  };
  expect(cureIn()).toContain('A new one would be 3.19 m, about 7.98 EUR without plugs and work.');
  expect(cureIn('NOK')).toContain('A new one would be 3.19 m.');
});
