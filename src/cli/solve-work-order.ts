import { type BoatIndex, indexBoat } from '../core/boat/boat-index.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import { wiredBoat } from '../core/joins/wired-boat.ts';
import type { BoatLog } from '../core/log/boat-log.ts';
import type { Plan } from '../core/plan-shape.ts';
import { byCodeUnit } from '../core/units/by-code-unit.ts';
import { workParts } from '../core/work/plan-work.ts';
import { searchWork } from '../core/work/search-work.ts';
import { doneJobs } from '../core/work/ticks.ts';
import type { PlanWork } from '../core/work-shape.ts';
import { orderSearchWords } from '../papers/work/search-order-words.ts';
import type { SearchWatch } from './solve-boat.ts';

/** Lets signals in. */
const breath = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** An order that was cut short says so. */
const asStopped = (work: PlanWork): PlanWork => ({
  ...work,
  phases: work.phases.map(({ order, ...phase }) => ({
    ...phase,
    ...(order === undefined
      ? {}
      : { order: order.status === 'proven' ? order : { ...order, status: 'stopped' as const } }),
  })),
});

interface OrderOf {
  readonly boat: Boat;
  readonly plan: Plan;
  /** what is done stays where it was done, and the rest begins no sooner than the last of it */
  readonly log: BoatLog;
  readonly watch: SearchWatch;
}

/** The plan with the order of its work looked for with the full budget, or until the watch says stop. */
export const solveWorkOrder = async ({ boat, plan, log, watch }: OrderOf): Promise<Plan> => {
  const index: BoatIndex = indexBoat(wiredBoat(boat).boat);
  const done = doneJobs(log);
  const today = [...done.values()].sort(byCodeUnit).at(-1);
  let found: PlanWork | undefined;
  for (const work of searchWork({
    ...workParts({ index, plan }),
    state: { done, ...(today === undefined ? {} : { today }) },
  })) {
    found = work;
    watch.onProgress(orderSearchWords(work));
    await breath();
    if (watch.isStopped()) return { ...plan, work: asStopped(work) };
  }
  return found === undefined ? plan : { ...plan, work: found };
};
