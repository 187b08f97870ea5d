/**
 * Fairlead for other programs: `import { plan } from 'fairlead'`. Pure: it reads no file, asks no clock and no network, and
 * runs in Node and in the browser alike. What is exported here keeps its name and meaning within a major version; everything
 * else is the program’s own. docs/library.md shows how it is used.
 */
import { isOpen } from '../core/accepted-findings.ts';
import { solvedLayouts } from '../core/backbone/solved-layouts.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import { plan } from '../core/plan.ts';
import type { Finding } from '../core/plan-shape.ts';

export { fullWork } from '../core/backbone/full-work.ts';
export { layoutProblems } from '../core/backbone/layout-problems.ts';
export type { Budget, Layout, LayoutMap, Problem } from '../core/backbone/problem.ts';
export { solveLayout } from '../core/backbone/solve-layout.ts';
export type { Boat } from '../core/boat/boat-schema.ts';
export { readBoat } from '../core/boat/read-boat.ts';
export { UserError } from '../core/boat/user-error.ts';
export { writeBoat } from '../core/boat/write-boat.ts';
export type { Finding, Level, Plan } from '../core/plan-shape.ts';
export { program } from '../core/program.ts';
export { isOpen, plan, solvedLayouts };

/**
 * The findings of a boat, as `fairlead check --json` prints them: gravest kinds are the levels `danger` and `fault`;
 * `isOpen` says whether one still wants something done. Searches the layout of each bus with the full work budget, which
 * takes a second or two for a large boat.
 *
 * @example check(readBoat(text)).filter((finding) => isOpen(finding) && finding.level === 'danger')
 */
export const check = (boat: Boat): readonly Finding[] => plan(boat, solvedLayouts(boat)).findings;
