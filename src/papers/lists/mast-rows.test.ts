import { expect, test } from 'vitest';
import type { MastEntry } from '../../core/plan-shape.ts';
import { mastRows } from './mast-rows.ts';

const places = new Map([
  ['collar', { name: 'deck collar' }],
  ['truck', { name: 'masthead' }],
  ['box', { name: 'box under the deck' }],
]);
const mast: MastEntry = {
  foot: 'collar',
  top: 'truck',
  stepped: 'deck',
  stepKnown: true,
  heightM: 12,
  breakAt: 'box',
  lines: [{ line: 'coax:a~b', aloftM: 12, weightKg: 0.7 }],
  weightKg: 0.7,
  holds: 6,
};

test('a mast says how it stands, what it carries, where it is parted and how the cables are held', () => {
  const [row] = mastRows(places, { masts: [mast] });
  expect(row?.what).toBe('Mast from deck collar to masthead');
  expect(row?.fact).toMatch(
    /^steps on deck, 12\.0 m high, 1 new cable of 0\.7 kg together\. .*6 times.*box under the deck/,
  );
});

test('a step that is only guessed says so, and a mast without a dry place too', () => {
  const { breakAt: _, ...wet } = mast;
  const [row] = mastRows(places, { masts: [{ ...wet, stepKnown: false }] });
  expect(row?.fact).toContain('as it seems steps on deck');
  expect(row?.fact).toContain('parted nowhere dry');
});
