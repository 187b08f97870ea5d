import { fullWork } from '../../core/backbone/full-work.ts';
import { layoutProblems } from '../../core/backbone/layout-problems.ts';
import type { Layout } from '../../core/backbone/problem.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import type { Plan } from '../../core/plan-shape.ts';

/** A boat with its plan. */
interface PlannedBoat {
  readonly boat: Boat;
  readonly plan: Plan;
}

/** A boat planned, in a worker, with the best layouts that are found within the patience given. */
export const plannedBoat = (boat: Boat, patienceMs: number): PlannedBoat => {
  const endMs = performance.now() + patienceMs;
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, fullWork)) {
      layouts.set(problem.hash, layout);
      if (performance.now() > endMs) break;
    }
  }
  return { boat, plan: plan(boat, layouts) };
};
