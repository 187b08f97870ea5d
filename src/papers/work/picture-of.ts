import type { Boat } from '../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { doneJobs } from '../../core/work/ticks.ts';
import type { PlanWork } from '../../core/work-shape.ts';
import { jobNumbers } from './job-numbers.ts';
import type { PictureInput } from './picture-input.ts';
import { workNames } from './work-names.ts';

/** What the picture and the day sheets of a boat’s work are drawn from, as far as her log has come. */
export const pictureOf = (
  boat: Boat,
  plan: Pick<Plan, 'lines' | 'shopping'>,
  { work, log, today }: { readonly work: PlanWork; readonly log: Pick<BoatLog, 'ticks'>; readonly today?: string },
): PictureInput => ({
  names: workNames(boat, plan),
  phases: work.phases,
  numbers: jobNumbers(work),
  done: new Set(doneJobs(log).keys()),
  ...(today === undefined ? {} : { today }),
});
