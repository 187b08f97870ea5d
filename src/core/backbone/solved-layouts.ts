import type { Boat } from '../boat/boat-schema.ts';
import { fullWork } from './full-work.ts';
import { layoutProblems } from './layout-problems.ts';
import type { Layout } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

/** The layouts every program comes to with the full work budget, by the hash of their problem: what `plan` wants beside the boat. */
export const solvedLayouts = (boat: Boat): ReadonlyMap<string, Layout> => {
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat))
    for (const layout of solveLayout(problem, fullWork)) layouts.set(problem.hash, layout);
  return layouts;
};
