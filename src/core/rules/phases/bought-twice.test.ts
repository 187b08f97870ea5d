import { expect, test } from 'vitest';
import type { PhaseItem } from '../../phases-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { boughtTwice } from './bought-twice.ts';
import { twoPhases } from './phase-case.test-helper.ts';

const item = (id: string, count: number, each: number): PhaseItem => ({
  id,
  item: id,
  kind: 'drop',
  count,
  by: 'piece',
  each,
});
const more = [item('light-drop-2000mm', 2, 2000), item('micro-tee', 1, 2200)];

test('phases that buy what the work done at once would buy pass, and so does a boat with one phase', () => {
  expect(findingsOf(boughtTwice, { plan: { phases: twoPhases() } })).toEqual([]);
  expect(findingsOf(boughtTwice)).toEqual([]);
});

test('what is bought beyond it is told with its sum, about the dearest item', () => {
  const phases = twoPhases({ costs: { cost: 6200, unpriced: 0, more, cures: [] } });
  expect(findingsOf(boughtTwice, { plan: { phases } })).toMatchObject([
    {
      level: 'advice',
      about: ['light-drop-2000mm'],
      says: expect.stringContaining('62.00 EUR more'),
      measured: { value: 62, unit: 'EUR' },
    },
  ]);
});

test('a converter for the time between is named, and the change that was tried is the cure', () => {
  const cures = [{ says: 'Fit the radio in phase 1 already.', edits: [], saves: 6200 }];
  const phases = twoPhases({ costs: { cost: 6200, unpriced: 0, more, cures }, between: ['converter'] });
  expect(findingsOf(boughtTwice, { plan: { phases } })).toMatchObject([
    {
      about: ['converter'],
      says: expect.stringContaining('Bought for the time between: Converter for the old radio; in the end'),
      cure: 'Fit the radio in phase 1 already.',
      cures: [{ cost: -6200 }],
    },
  ]);
});
