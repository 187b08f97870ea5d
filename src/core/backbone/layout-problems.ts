import type { Boat } from '../boat/boat-schema.ts';
import { wiredBoat } from '../joins/wired-boat.ts';
import type { Problem } from './problem.ts';
import { problemsOf } from './problems-of.ts';

/**
 * The layout problem of every bus of a boat, for the last phase, sorted by bus. Equal boats give equal hashes whatever the
 * order of their lists; names and texts do not count. Pure.
 */
export const layoutProblems = (boat: Boat): Problem[] => problemsOf(wiredBoat(boat).boat);
