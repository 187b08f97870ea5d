import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { asCure } from '../../core/cures/as-cure.ts';
import { findingsOf } from '../../core/rules/rule-case.test-helper.ts';
import { startNotIsolated } from '../../core/rules/supply/start-not-isolated.ts';
import { cureWords } from './cure-words.ts';

test.each([
  [23_990, 'Fit a converter (about 240 EUR in parts).'],
  [0, 'Fit a converter (no parts to buy).'],
  [-5000, 'Fit a converter (about 50 EUR less).'],
  // among its parts is one without a price
  [undefined, 'Fit a converter (price to be asked).'],
])('a cure of %s hundredths reads as "%s"', (cost, says) => {
  expect(cureWords(asCure({ says: 'Fit a converter.', edits: [], cost }), 'EUR')).toBe(says);
});

test('a cure that only answers a question has its words and no price', () => {
  const { boat } = aBoat();
  const [house] = boat.supply.banks;
  if (house === undefined) return expect.unreachable();
  const start = { ...house, id: 'start', for: 'start' as const };
  const asked = { ...boat, supply: { ...boat.supply, banks: [{ ...house, for: 'house' as const }, start] } };
  const cures = findingsOf(startNotIsolated, { boat: asked }).flatMap((finding) => finding.cures ?? []);
  expect(cures.length).toBeGreaterThan(3);
  expect(cures.map((cure) => cureWords(cure, 'EUR'))).toEqual(cures.map(({ says }) => says));
});
