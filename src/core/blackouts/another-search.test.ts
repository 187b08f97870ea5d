import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Failure, Loss } from '../blackouts-shape.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { readBoat } from '../boat/read-boat.ts';
import { plainAnswer } from '../readings/plain-answer.test-helper.ts';
import { blackoutTable } from './blackout-table.ts';
import { failingBoats } from './failing-boats.test-helper.ts';
import { type Asks, plainLosses } from './plain-failures.test-helper.ts';
import { followedAnew, planned } from './planned.test-helper.ts';

const nameOf = ({ reading, instance, at }: Loss): string => `${reading} ${instance ?? ''} ${at}`;
const names = (losses: readonly Loss[]): string[] => losses.map(nameOf).sort();

/** Each failure of the table, and by both engines what it takes for certain and at worst. */
const answers = (boat: Boat, isAsked: (failure: Failure, at: number) => boolean, asks?: Asks) => {
  const { laid, reaches, phase, boat: own } = planned(boat);
  const ask = asks ?? followedAnew(phase);
  const plain = (failures: readonly Failure[], hopeful: boolean): string[] =>
    plainLosses({ boat: own, laid, failures, hopeful, asks: ask, phase });
  const never = new Set(plain([], true));
  const { blackouts } = blackoutTable(laid, reaches, phase);
  const every = blackouts.flatMap((entry) => [entry, ...(entry.also ?? [])].map((failure) => ({ failure, entry })));
  return every
    .filter(({ failure }, at) => isAsked(failure, at))
    .map(({ failure: { fails, how }, entry: { loses } }) => ({
      told: { fails, how, worst: names(loses), sure: names(loses.filter(({ perhaps }) => perhaps === undefined)) },
      found: {
        fails,
        how,
        worst: plain([{ fails, how }], false).filter((name) => !never.has(name)),
        sure: plain([{ fails, how }], true).filter((name) => !never.has(name)),
      },
    }));
};

describe('a plain search of a graph of copper with the failed piece taken out', () => {
  // the large boats take the plain search minutes, so of their failures every few are asked
  test.each([
    ['gannet', 1],
    ['sandpiper', 1],
    ['bonxie', 13],
    ['wreck', 101],
  ])('finds the same losses on %s, for every failure or one in %i', { timeout: 120_000 }, (name, every) => {
    const file = new URL(`../../../examples/${name}/${name}.boat.json`, import.meta.url);
    const found = answers(readBoat(readFileSync(file, 'utf8')), (_, at) => at % every === 0);
    expect(found.length).toBeGreaterThan(10);
    for (const { told, found: plain } of found) expect(told).toEqual(plain);
  });

  test('finds the same losses on hundreds of small boats, where every row of ports is tried', {
    timeout: 120_000,
  }, () => {
    const fitted = (boat: Boat): Boat => ({ ...boat, sheets: [...indexBoat(boat).sheetOf.values()] });
    let taken = 0;
    let doubted = 0;
    fc.assert(
      fc.property(failingBoats, (boat) => {
        const asks: Asks = (rest, need) => plainAnswer(fitted(rest), need).by.length > 0;
        for (const { told, found } of answers(boat, (_, at) => at % 4 === 0, asks)) {
          expect(told).toEqual(found);
          taken += told.worst.length > 0 ? 1 : 0;
          doubted += told.worst.length > told.sure.length ? 1 : 0;
        }
      }),
      { numRuns: 250, seed: 11 },
    );
    // worth trying only while failures take something, and some of it is doubtful
    expect(taken).toBeGreaterThan(500);
    expect(doubted).toBeGreaterThan(50);
  });
});
