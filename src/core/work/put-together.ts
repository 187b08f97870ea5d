import type { BoatIndex } from '../boat/boat-index.ts';
import { addDays } from '../units/add-days.ts';
import type { Job, PhaseWork, PlanWork, Watched } from '../work-shape.ts';
import type { LeadDays } from './order/order-by.ts';
import { planPhaseWork, type WorkAnswers, type WorkState } from './plan-phase-work.ts';

/** What the work of a boat is put together from. */
export interface WorkParts {
  readonly index: BoatIndex;
  /** the jobs of all phases */
  readonly jobs: readonly Job[];
  readonly watchedIn: (phase: number) => readonly Watched[];
  readonly leaving: PlanWork['leaving'];
  readonly leads: LeadDays;
  readonly answers?: WorkAnswers;
  readonly state?: WorkState;
}

const nothingDone: WorkState = { done: new Map() };

/**
 * The work of every phase in its order, one after another: a phase that has no first day of its own begins on the day after the
 * last of the one before. An answer that the checker refuses counts as missing; where one is missing, a quick one is found.
 */
export const putTogether = ({
  index,
  jobs,
  watchedIn,
  leaving,
  leads,
  answers = new Map(),
  state = nothingDone,
}: WorkParts): PlanWork => {
  const work = index.boat.work ?? {};
  const numbers = [...new Set(jobs.map(({ phase }) => phase))].sort((a, b) => a - b);
  const phases: PhaseWork[] = [];
  let next: string | undefined;
  for (const phase of numbers) {
    const first = work.starts?.find((start) => start.phase === phase)?.on ?? next;
    const own = planPhaseWork({
      phase,
      jobs: jobs.filter((job) => job.phase === phase),
      functions: watchedIn(phase),
      work,
      leads,
      answers,
      state,
      ...(first === undefined ? {} : { first }),
    });
    phases.push(own);
    const last = own.order === undefined ? own.days.at(-1)?.date : own.days[own.order.cost.lastDay]?.date;
    next = last === undefined ? undefined : addDays(last, 1);
  }
  return { phases, leaving };
};
