import type { Boat } from '../core/boat/boat-schema.ts';
import type { Plan } from '../core/plan-shape.ts';
import { solveBoat } from './solve-boat.ts';
import { watchedSearch } from './watched-search.ts';

/** What a shell reports of a program that Ctrl-C ended. */
const interruptedCode = 130;

/** The plan of one boat, with the pictures beside her file, for somebody at a terminal, who sees how the search stands and may stop it. */
export const solveAtTerminal = (boat: Boat, pictures?: ReadonlySet<string>): Promise<Plan> =>
  watchedSearch((watch) => solveBoat(boat, watch, pictures), {
    terminal: process.stderr,
    interrupts: process,
    nowMs: () => performance.now(),
    quit: () => process.exit(interruptedCode),
  });
