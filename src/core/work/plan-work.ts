import type { BoatIndex } from '../boat/boat-index.ts';
import type { PlanDraft } from '../plan-shape.ts';
import type { PlanWork } from '../work-shape.ts';
import { jobsOf } from './jobs/jobs-of.ts';
import { leavingOf } from './jobs/leaving-of.ts';
import { watchedOf } from './jobs/watched-of.ts';
import type { LeadDays } from './order/order-by.ts';
import type { WorkAnswers, WorkState } from './plan-phase-work.ts';
import { putTogether, type WorkParts } from './put-together.ts';

/** What the work is planned from. `answers`: orders found, by the hash of their problem; `state`: what is done, and what day it is. */
export interface WorkInput {
  readonly index: BoatIndex;
  readonly plan: Omit<PlanDraft, 'work'>;
  readonly answers?: WorkAnswers;
  readonly state?: WorkState;
}

/** How long what is not there yet takes to come: items not yet ordered, by their days to come, and papers nobody has asked for. */
const leadsOf = ({ index, plan }: WorkInput): LeadDays =>
  new Map([
    ...(index.boat.orders ?? []).flatMap(({ item, state, leadDays }): [string, number][] =>
      state === 'order' && leadDays !== undefined ? [[item, leadDays]] : [],
    ),
    ...plan.shipPapers.flatMap(({ paper, state, waitDays }): [string, number][] =>
      state === 'to-start' || state === 'to-ask' ? [[paper, waitDays]] : [],
    ),
  ]);

/** What the work of a refit is put together from: the jobs that come of the plan, and what she must not be without meanwhile. */
export const workParts = (input: WorkInput): WorkParts => {
  const { index, plan, answers, state } = input;
  const jobs = jobsOf({ index, plan });
  const watched = watchedOf({ index, plan, jobs });
  return {
    index,
    jobs,
    watchedIn: (phase) => watched.get(phase) ?? [],
    leaving: leavingOf({ index, plan, jobs }),
    leads: leadsOf(input),
    ...(answers === undefined ? {} : { answers }),
    ...(state === undefined ? {} : { state }),
  };
};

/**
 * The work of a refit: the jobs that come of the plan, what she must not be without meanwhile, and the order of each phase with the
 * least dark hours that was found. Pure; without answers the orders are quick ones.
 */
export const planWork = (input: WorkInput): PlanWork => putTogether(workParts(input));
