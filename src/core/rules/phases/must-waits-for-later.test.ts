import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { PhaseMissing, PhasesPart } from '../../phases-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { mustWaitsForLater } from './must-waits-for-later.ts';
import { twoPhases } from './phase-case.test-helper.ts';

const heading: PhaseMissing = { reading: 'heading', at: 'display', must: true, seenBefore: false, from: 2 };
const lacking = (...missing: PhaseMissing[]): PhasesPart => {
  const part = twoPhases();
  return { ...part, phases: part.phases.map((entry) => (entry.phase === 1 ? { ...entry, missing } : entry)) };
};
const found = (...missing: PhaseMissing[]) =>
  findingsOf(mustWaitsForLater, {
    boat: aBoat().unit('compass', { phase: 2 }).boat,
    plan: {
      phases: lacking(...missing),
      readings: [
        {
          reading: 'heading',
          at: 'display',
          must: true,
          arrives: true,
          by: ['compass.n2k', 'display.n2k'],
          backups: [],
        },
      ],
    },
  });

test('a must that she had before and a later phase brings again is a doubt, with the unit that brings it', () => {
  expect(found({ ...heading, seenBefore: true })).toMatchObject([
    {
      level: 'doubt',
      about: ['display'],
      says: expect.stringContaining('arrives again in phase 2 only'),
      cure: expect.stringContaining('Fit Heading sensor at the mast in phase 1 already'),
    },
  ]);
});

test('one that she never had passes: until its unit comes she sails as she did', () => {
  expect(found(heading)).toEqual([]);
});

test('what is no must, and what no phase brings, pass', () => {
  const { from: _, ...never } = { ...heading, seenBefore: true };
  expect(found({ ...heading, seenBefore: true, must: false }, never)).toEqual([]);
});
