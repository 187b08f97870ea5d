import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import { readBoat } from '../boat/read-boat.ts';
import { wiredBoat } from '../joins/wired-boat.ts';
import { nearPlan } from '../plan.ts';
import { planWork } from './plan-work.ts';

test('the work of a boat has every job of hers in its order, the same whenever it is asked', () => {
  const text = readFileSync(new URL('../../../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8');
  const boat = readBoat(text);
  const asked = { index: indexBoat(wiredBoat(boat).boat), plan: nearPlan(boat, new Map()) };
  const work = planWork(asked);
  expect(phaseNumbers(work)).toEqual([1, 2]);
  for (const { jobs: own, order, stuck } of work.phases) {
    expect(stuck).toBeUndefined();
    const ordered = order?.starts.map(({ job }) => job) ?? [];
    expect(new Set(ordered)).toEqual(new Set(own.filter((job) => job.leftOut === undefined).map(({ id }) => id)));
    expect(order?.cost.darkH).toBeLessThanOrEqual(order?.plain?.darkH ?? 0);
  }
  expect(planWork(asked)).toEqual(work);
});

const phaseNumbers = ({ phases }: ReturnType<typeof planWork>): number[] => phases.map(({ phase }) => phase);
