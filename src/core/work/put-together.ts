import type { BoatIndex } from '../boat/boat-index.ts';
import { addDays } from '../units/add-days.ts';
import type { Job, PhaseWork, PlanWork, Watched } from '../work-shape.ts';
import type { LeadDays } from './order/order-by.ts';
import { type PhaseInput, planPhaseWork, type WorkAnswers, type WorkState } from './plan-phase-work.ts';

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

interface AskedPhase {
  readonly input: PhaseInput;
  readonly planned: PhaseWork;
}

/** Every phase as it is asked and as it is planned: one that has no first day of its own begins on the day after the last of the one before. */
const phasesOf = ({
  index,
  jobs,
  watchedIn,
  leads,
  answers = new Map(),
  state = nothingDone,
}: WorkParts): AskedPhase[] => {
  const work = index.boat.work ?? {};
  const numbers = [...new Set(jobs.map(({ phase }) => phase))].sort((a, b) => a - b);
  const phases: AskedPhase[] = [];
  let next: string | undefined;
  for (const phase of numbers) {
    const first = work.starts?.find((start) => start.phase === phase)?.on ?? next;
    const input = {
      phase,
      jobs: jobs.filter((job) => job.phase === phase),
      functions: watchedIn(phase),
      work,
      leads,
      answers,
      state,
      ...(first === undefined ? {} : { first }),
    };
    const planned = planPhaseWork(input);
    phases.push({ input, planned });
    const last = planned.order === undefined ? planned.days.at(-1) : planned.days[planned.order.cost.lastDay];
    next = last?.date === undefined ? undefined : addDays(last.date, 1);
  }
  return phases;
};

/** What is asked of each phase, as the answers so far leave it. */
export const phaseInputs = (parts: WorkParts): PhaseInput[] => phasesOf(parts).map(({ input }) => input);

/**
 * The work of every phase in its order, one after another. An answer that the checker refuses counts as missing; where one is
 * missing, a quick one is found.
 */
export const putTogether = (parts: WorkParts): PlanWork => ({
  phases: phasesOf(parts).map(({ planned }) => planned),
  leaving: parts.leaving,
});
