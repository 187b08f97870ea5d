import type { BoatIndex } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { keptFor } from '../boat/kept-for.ts';
import { rememberFor } from '../boat/remember-for.ts';
import type { PlanWork } from '../work-shape.ts';
import type { JobsInput, LaidWork, WorkedPlan } from './jobs/job-frame.ts';
import { jobsAwaiting } from './jobs/jobs-awaiting.ts';
import { jobsOf } from './jobs/jobs-of.ts';
import { leavingOf } from './jobs/leaving-of.ts';
import { watchedOf } from './jobs/watched-of.ts';
import type { LeadDays } from './order/order-by.ts';
import { putTogether, type WorkParts } from './put-together.ts';
import { workSource } from './work-source.ts';

/** What the work is planned from. `laid`: what `planLaid` keeps for the boat, by which her work is known again. */
export interface WorkInput {
  readonly index: BoatIndex;
  readonly plan: WorkedPlan;
  readonly laid?: LaidWork;
}

/** How long what is not there yet takes to come: items not yet ordered, by their days to come, and papers nobody has asked for. */
const leadsOf = ({ plan }: JobsInput, orders: Boat['orders'] = []): LeadDays =>
  new Map([
    ...orders.flatMap(({ item, state, leadDays }): [string, number][] =>
      state === 'order' && leadDays !== undefined ? [[item, leadDays]] : [],
    ),
    ...plan.shipPapers.flatMap(({ paper, state, waitDays }): [string, number][] =>
      state === 'to-start' || state === 'to-ask' ? [[paper, waitDays]] : [],
    ),
  ]);

/** All of the work that does not hang on what was ordered. */
const standingWork = keptFor((source: JobsInput) => {
  const jobs = jobsOf(source);
  const watched = watchedOf({ ...source, jobs });
  return { jobs, watched, leaving: leavingOf({ ...source, jobs }) };
});

const partsWith = (source: JobsInput, orders: Boat['orders']): WorkParts => {
  const { jobs, watched, leaving } = standingWork(source);
  return {
    index: source.index,
    jobs: jobsAwaiting(jobs, orders),
    watchedIn: (phase) => watched.get(phase) ?? [],
    leaving,
    leads: leadsOf(source, orders),
  };
};

/** What the work of a refit is put together from: the jobs that come of the plan, and what she must not be without meanwhile. */
export const workParts = (input: WorkInput): WorkParts => partsWith(workSource(input), input.index.boat.orders);

/** What is ordered, as far as the work looks at it. */
const awaitedText = (orders: Boat['orders'] = []): string =>
  JSON.stringify(orders.map(({ item, state, due, leadDays }) => [item, state, due, leadDays]));

const orderedWork = rememberFor({
  most: 3,
  keyOf: awaitedText,
  find: (source: JobsInput, orders: Boat['orders']) => putTogether(partsWith(source, orders)),
});

/**
 * The work of a refit: the jobs that come of the plan, what she must not be without meanwhile, and the order of each phase with the
 * least dark hours that is found quickly. Pure; kept for as long as nothing is otherwise that it hangs on.
 */
export const planWork = (input: WorkInput): PlanWork => orderedWork(workSource(input), input.index.boat.orders);
