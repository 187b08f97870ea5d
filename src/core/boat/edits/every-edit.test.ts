import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from '../boat-schema.ts';
import { aFullBoat } from '../full-boat.test-helper.ts';
import { redo, undo } from '../history.ts';
import { readBoat } from '../read-boat.ts';
import { startHistory } from '../start-history.ts';
import { tried } from '../tried.test-helper.ts';
import { writeBoat } from '../write-boat.ts';
import { type EditId, edits } from './index.ts';
import { plausibleEdit } from './plausible-edit.test-helper.ts';

const demo = (id: string): Boat =>
  readBoat(readFileSync(new URL(`../../../../examples/${id}/${id}.boat.json`, import.meta.url), 'utf8'));

const gannet = demo('gannet');
const boats = [aFullBoat(), gannet, demo('sandpiper')];

// reason: the keys of the record of every edit are the ids of edits
const ids = Object.keys(edits) as EditId[];

/** Few tries at a time, for most edits find something at once. */
const findsSomething = (id: EditId): boolean =>
  [1, 2, 3, 4].some((seed) =>
    boats.some((boat) =>
      fc.sample(plausibleEdit(boat, id), { numRuns: 5, seed }).some((call) => {
        const start = startHistory(boat);
        return tried(start, call) !== start;
      }),
    ),
  );

test('every edit finds something to change in a boat, made from its schema and the boat’s own things', {
  timeout: 120_000,
}, () => {
  // one that does not wants a line in plausible-edit.test-helper.ts
  expect(ids.filter((id) => !findsSomething(id))).toEqual([]);
});

/** Edits of one boat, each sketched on the boat as the one before it left it, until some number of them is made. */
const madeAtRandom = (boat: Boat, { seed, count }: { seed: number; count: number }) => {
  let history = startHistory(boat);
  const texts = [writeBoat(boat)];
  for (let turn = 0; history.done.length < count; turn += 1) {
    const [call] = fc.sample(plausibleEdit(history.boat), { numRuns: 1, seed: seed * 100_000 + turn });
    const next = call === undefined ? history : tried(history, call);
    if (next !== history) texts.push(writeBoat(next.boat));
    history = next;
  }
  return { history, texts };
};

test.each([
  ['Gannet', gannet, 1],
  ['a boat with something in every list', aFullBoat(), 2],
] as const)(
  '200 random edits of %s taken back one by one, and made again, go through the same bytes',
  (_, boat, seed) => {
    let { history, texts } = madeAtRandom(boat, { seed, count: 200 });
    expect(texts).toHaveLength(201);
    for (const text of texts.toReversed()) {
      expect(writeBoat(history.boat) === text).toBe(true);
      history = undo(history);
    }
    expect(undo(history)).toBe(history);
    for (const text of texts) {
      expect(writeBoat(history.boat) === text).toBe(true);
      history = redo(history);
    }
    expect(redo(history)).toBe(history);
    expect(readBoat(texts.at(-1) ?? '')).toEqual(history.boat);
  },
);
