import { layoutProblems } from '../core/backbone/layout-problems.ts';
import type { Layout } from '../core/backbone/problem.ts';
import { solveLayout } from '../core/backbone/solve-layout.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import { plan } from '../core/plan.ts';
import type { Plan } from '../core/plan-shape.ts';

/** Layouts tried for one bus; the command line runs all of them, so equal files give equal plans on any machine. */
const fullWork = 20_000;

/** The plan of one boat with every layout problem worked through to the full budget. */
export const solveBoat = (boat: Boat): Plan => {
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat)) {
    for (const layout of solveLayout(problem, { work: fullWork })) layouts.set(problem.hash, layout);
  }
  return plan(boat, layouts);
};
