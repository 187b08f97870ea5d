import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aFeed } from './power-case.test-helper.ts';
import { slowFuseNeeded } from './slow-fuse-needed.ts';

const found = (peakA: number, over: Parameters<typeof aFeed>[0] = {}) =>
  findingsOf(slowFuseNeeded, { plan: { feeds: [aFeed({ peakA, ...over })] } });

test('a peak above a quick fuse asks for a slow one of the same rating', () => {
  expect(found(5)).toEqual([]);
  expect(found(6)).toMatchObject([
    { level: 'advice', about: ['display.dc', 'helm-circuit'], cure: expect.stringContaining('slow') },
  ]);
});

test('a fuse in the line is ordered slow by the plan itself', () => {
  expect(found(6, { fuseBy: 'in-line', fuseSlow: true })).toEqual([]);
});

test('a slow breaker lets it pass', () => {
  const { boat } = aBoat().change((draft) => {
    for (const { circuits } of draft.supply.panels) for (const circuit of circuits) circuit.kind = 'slow-breaker';
  });
  expect(findingsOf(slowFuseNeeded, { boat, plan: { feeds: [aFeed({ peakA: 6 })] } })).toEqual([]);
});
