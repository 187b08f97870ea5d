import { fullWork } from '../core/backbone/full-work.ts';
import { layoutProblems } from '../core/backbone/layout-problems.ts';
import type { Layout } from '../core/backbone/problem.ts';
import { solveLayout } from '../core/backbone/solve-layout.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import { plan } from '../core/plan.ts';
import type { Plan } from '../core/plan-shape.ts';

/** The plan of one boat with every layout problem worked through to the full budget. */
export const solveBoat = (boat: Boat): Plan => {
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, fullWork)) layouts.set(problem.hash, layout);
  }
  return plan(boat, layouts);
};
