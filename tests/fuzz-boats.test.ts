import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { aFullBoat } from '../src/core/boat/full-boat.test-helper.ts';
import { plan } from '../src/core/plan.ts';
import { boatSeeds, fuzzBoats } from './fuzz/fuzz-boats.ts';
import { randomEdits } from './fuzz/random-edits.ts';
import { startLot } from './recordings/mutate-bytes.ts';

const whole = readFileSync(new URL('../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8');
const planned = (boat: Boat): void => void plan(boat, new Map());

// As many as a commit has time for; `npm run fuzz:boats` and `npm run fuzz:edits` for millions, with any seed.
const seed = 20_261_127;

test('200,000 damaged boats are read, or refused with a sentence, a place and what to do', { timeout: 600_000 }, () => {
  const told = fuzzBoats(boatSeeds(whole), { count: 200_000, lot: startLot(seed), textEvery: 40, writeEvery: 100 });
  expect(told.faults, `seed ${seed}`).toEqual([]);
  expect(told).toMatchObject({ tried: 200_000, texts: 5000 });
  // neither are all refused nor all let in
  expect(told.good).toBeGreaterThan(20_000);
  expect(told.good).toBeLessThan(100_000);
  expect(told.written).toBeGreaterThan(200);
});

test('1,000 edits at random, plausible or not, are made or refused in words, and taken back', {
  timeout: 120_000,
}, () => {
  const ways = { lot: startLot(seed), count: 1000, checkEvery: 10, planEvery: 200, plan: planned };
  const { faults, ...told } = randomEdits(aFullBoat(), ways);
  expect(faults, `seed ${seed}`).toEqual([]);
  expect(told.made).toBeGreaterThan(200);
  expect(told.refused).toBeGreaterThan(200);
  expect(told.planned).toBeGreaterThan(0);
});
