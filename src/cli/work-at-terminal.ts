import type { Boat } from '../core/boat/boat-schema.ts';
import type { BoatLog } from '../core/log/boat-log.ts';
import type { Plan } from '../core/plan-shape.ts';
import { solveWorkOrder } from './solve-work-order.ts';
import { watchedSearch } from './watched-search.ts';

/** What a shell reports of a program that Ctrl-C ended. */
const interruptedCode = 130;

/** The plan with the order of its work, for somebody at a terminal, who sees how the search stands and may stop it. */
export const workAtTerminal = (of: {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly log: BoatLog;
}): Promise<Plan> =>
  watchedSearch((watch) => solveWorkOrder({ ...of, watch }), {
    terminal: process.stderr,
    interrupts: process,
    nowMs: () => performance.now(),
    quit: () => process.exit(interruptedCode),
  });
