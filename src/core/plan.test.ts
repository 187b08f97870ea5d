import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from './boat/boat-schema.ts';
import type { EditId } from './boat/edits/index.ts';
import { plausibleEdit } from './boat/edits/plausible-edit.test-helper.ts';
import { aFullBoat } from './boat/full-boat.test-helper.ts';
import { readBoat } from './boat/read-boat.ts';
import { startHistory } from './boat/start-history.ts';
import { tried } from './boat/tried.test-helper.ts';
import { writeBoat } from './boat/write-boat.ts';
import { lateParts, plan } from './plan.ts';
import { planWith } from './plan-with.ts';

/** What each part of a plan that is kept hangs on, and between them whatever else a person may change. */
const turns: readonly (EditId | undefined)[] = [
  ...(['change-need', 'set-order', 'set-work', 'set-essential', 'remove-need'] as const),
  ...(['accept-finding', 'set-order', undefined, 'change-need', 'settle-job', undefined, 'set-quote'] as const),
];

/** A boat as it was after each of some edits at random, each of which changed something. */
const boatsAfter = (seed: number): Boat[] => {
  let history = startHistory(readBoat(writeBoat(aFullBoat())));
  return turns.map((turn, at) => {
    for (let tries = 0; tries < 40; tries += 1) {
      const draw = { numRuns: 1, seed: seed * 10_000 + at * 100 + tries };
      const next = fc.sample(plausibleEdit(history.boat, turn), draw).reduce(tried, history);
      if (next === history) continue;
      history = next;
      break;
    }
    return history.boat;
  });
};

test('a boat is planned after many an edit as by a planner that never saw another boat', () => {
  const boats = boatsAfter(1);
  expect(new Set(boats).size).toBe(turns.length);
  const layouts = new Map();
  const texts = boats.map((boat) => {
    const text = JSON.stringify(plan(boat, layouts));
    expect(text === JSON.stringify(planWith(lateParts)(boat, layouts))).toBe(true);
    return text;
  });
  expect(new Set(texts).size).toBeGreaterThan(turns.length / 2);
});
