import { expect, test } from 'vitest';
import { fullWork } from './backbone/full-work.ts';
import { layoutProblems } from './backbone/layout-problems.ts';
import type { Layout } from './backbone/problem.ts';
import { runnerUpLayout, solveLayout } from './backbone/solve-layout.ts';
import { aBoat } from './boat/a-boat.test-helper.ts';
import { indexBoat } from './boat/boat-index.ts';
import { joinsOf } from './joins/joins-of.ts';
import { planBuses } from './plan-buses.ts';

const [problem] = layoutProblems(aBoat().boat);
if (problem === undefined) throw new Error('The Tern has a bus.');
const best = [...solveLayout(problem, fullWork)].at(-1);
const next = best === undefined ? undefined : runnerUpLayout(problem, best, fullWork);

/** What the plan says of the bus with a layout settled, the best one known or not. */
const settled = (layout: Layout | undefined, known: readonly Layout[]) => {
  const pin = {
    grade: layout?.grade ?? 'light',
    walk: (layout?.walk ?? []).map((step) => ({ ...step, tees: [...step.tees] })),
    state: 'fixed' as const,
  };
  const { boat } = aBoat().with({ pins: { layouts: { nav: pin } } });
  const layouts = new Map(known.map((one) => [one.problem, one]));
  const [bus] = planBuses({
    index: indexBoat(boat),
    problems: layoutProblems(boat),
    layouts,
    joins: joinsOf(indexBoat(boat), 1),
  });
  return bus?.entry.layout;
};

test('a layout that is settled and is the cheapest could not have been bettered', () => {
  expect(settled(best, best === undefined ? [] : [best])).toMatchObject({
    status: 'pinned',
    cost: best?.cost,
    bound: best?.cost,
  });
});

test('of a dearer one that is settled the plan knows what another could have saved', () => {
  const told = settled(next, best === undefined ? [] : [best]);
  expect(told).toMatchObject({ status: 'pinned', cost: next?.cost, bound: best?.cost });
  expect(told?.cost).toBeGreaterThan(told?.bound ?? 0);
});

test('where nobody solved the problem nothing is known of it', () => {
  expect(settled(next, [])).toMatchObject({ status: 'pinned', bound: 0 });
});
