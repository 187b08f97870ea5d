import { byCodeUnit } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import { rememberFor } from '../boat/remember-for.ts';
import type { Work } from '../boat/work.ts';
import { addDays } from '../units/add-days.ts';
import type { Job, PhaseWork, Stuck, Watched } from '../work-shape.ts';
import { calendarOf, type WorkCalendar } from './order/calendar.ts';
import { checkWorkAnswer, compareWorkCosts } from './order/check-work-answer.ts';
import { dayIndex } from './order/day-index.ts';
import { type LeadDays, orderByDays } from './order/order-by.ts';
import type { WorkAnswer, WorkProblem } from './order/problem.ts';
import { quickAnswer } from './order/quick-answer.ts';
import { stuckOf } from './order/stuck-of.ts';
import { slotsWith, workProblem } from './order/work-problem.ts';
import { writtenOrder } from './order/written-order.ts';

/** What is done, each job with its day, and what day it is. */
export interface WorkState {
  readonly today?: string;
  readonly done: ReadonlyMap<string, string>;
}

/** Answers to problems, by the hash of the problem. */
export type WorkAnswers = ReadonlyMap<string, WorkAnswer>;

export interface PhaseInput {
  readonly phase: number;
  readonly jobs: readonly Job[];
  readonly functions: readonly Watched[];
  readonly work: Work;
  readonly leads: LeadDays;
  readonly answers: WorkAnswers;
  readonly state: WorkState;
  /** the day on which the phase begins; absent where days are only counted */
  readonly first?: string;
}

/** How many days more are taken ashore and with the mast down, step by step, before it is said that there is no order. */
const stretches = [0, 2, 6, 14, 30];

interface Asked {
  readonly calendar: WorkCalendar;
  readonly problem: WorkProblem;
  readonly answer?: WorkAnswer;
}

/** Jobs with the day on which all comes that they hang on: what is not ordered yet would be there so long after today. */
const withComing = ({ jobs, leads, state: { today } }: PhaseInput): readonly Job[] =>
  today === undefined
    ? jobs
    : jobs.map((job) => ({
        ...job,
        waitsFor: job.waitsFor.map((one) => {
          const lead = leads.get(one.id);
          return one.on !== undefined || lead === undefined ? one : { ...one, on: addDays(today, lead) };
        }),
      }));

type AskWith = (taken: { readonly stretch: number; readonly sooner: number }) => Asked;

const askedOf = (input: PhaseInput): Asked => {
  const { phase, functions, work, answers, state, first } = input;
  const jobs = withComing(input);
  const open = jobs.filter(({ id, leftOut }) => leftOut === undefined && !state.done.has(id));
  const days = [...state.done].filter(([id]) => jobs.some((job) => job.id === id)).map(([, day]) => day);
  const begin = first === undefined ? undefined : [first, ...days].sort(byCodeUnit)[0];
  const today = begin === undefined ? undefined : [first ?? begin, state.today ?? begin].sort(byCodeUnit).at(-1);
  const asOf: AskWith = ({ stretch, sooner }) => {
    const calendar = calendarOf({
      work,
      jobs: open,
      ...(begin === undefined ? {} : { first: begin }),
      ...(today === undefined ? {} : { today }),
      stretch,
      sooner,
    });
    const problem = workProblem({
      phase,
      jobs,
      functions,
      calendar,
      work,
      done: state.done,
    });
    const answer = answerTo(problem, answers);
    return { calendar, problem, ...(answer === undefined ? {} : { answer }) };
  };
  for (const stretch of stretches) {
    const asked = asOf({ stretch, sooner: 0 });
    if (asked.answer !== undefined) return withoutIdle(asked, asked.answer, (sooner) => asOf({ stretch, sooner }));
    if (asked.calendar.taken.length === 0) return asked;
  }
  return asOf({ stretch: 0, sooner: 0 });
};

/** Days on which nothing is done right before the first that are taken. */
const idleDays = ({ calendar: { taken, perDay }, problem: { jobs } }: Asked, { starts }: WorkAnswer): number => {
  const from = Math.min(...taken.map((one) => one.from));
  const slots = new Map(jobs.map((job) => [job.id, job.slots]));
  const lasts = starts
    .filter(({ day }) => day < from)
    .map(({ job, day }) => day + Math.ceil(Math.max(1, slots.get(job) ?? 1) / perDay) - 1);
  return taken.length === 0 ? 0 : Math.max(0, from - 1 - Math.max(0, ...lasts));
};

/** Where everybody would wait for days that are taken by rule, they are taken so much sooner, if the order is the better for it. */
const withoutIdle = (asked: Asked, answer: WorkAnswer, askSooner: (sooner: number) => Asked): Asked => {
  const idle = idleDays(asked, answer);
  if (idle === 0) return asked;
  const sooner = askSooner(idle);
  return sooner.answer !== undefined && compareWorkCosts(sooner.answer.cost, answer.cost) < 0 ? sooner : asked;
};

/** The question that the order of a phase answers. */
export const problemOfPhase = (input: PhaseInput): WorkProblem => askedOf(input).problem;

/** Whether an answer holds, tested once for each answer and problem. */
const isHeld = rememberFor({
  most: 4,
  keyOf: ({ hash }: WorkProblem) => hash,
  find: (answer: WorkAnswer, problem: WorkProblem) => checkWorkAnswer(problem, answer).broken.length === 0,
});

/** Why a problem has no order takes many searches, so that it is kept for the next plan. */
const whyStuck = remember({ most: 12, keyOf: ({ hash }: WorkProblem) => hash, find: stuckOf });

const answerTo = (problem: WorkProblem, answers: WorkAnswers): WorkAnswer | undefined => {
  const given = answers.get(problem.hash);
  return given !== undefined && isHeld(given, problem) ? given : quickAnswer(problem);
};

/** Jobs that are done stand where they were done, on no half hour of their day. */
const doneStarts = (
  jobs: readonly Job[],
  calendar: WorkCalendar,
  { done }: WorkState,
): { job: string; day: number; slot: number; lastDay: number; lastSlot: number; hands: string[] }[] =>
  jobs.flatMap(({ id }) => {
    const on = done.get(id);
    if (on === undefined) return [];
    const day = dayIndex(calendar, on) ?? 0;
    return [{ job: id, day, slot: 0, lastDay: day, lastSlot: 0, hands: [] }];
  });

/** Of a circle only what a person said can be unsaid, where a person said any of it. */
const withoutUsualLinks = (stuck: Stuck, jobs: readonly Job[]): Stuck => {
  if (stuck.why !== 'circle') return stuck;
  const isPersons = ([id, before]: readonly string[]): boolean =>
    jobs.some((job) => job.id === id && job.after.some((link) => link.job === before && link.why === 'person'));
  const own = stuck.relax.filter(({ about }) => isPersons(about));
  return own.length === 0 ? stuck : { ...stuck, relax: own };
};

/** Days beyond the last job that the plan still shows. */
const daysShown = 7;

/** The work of one phase in its order, or why there is none. */
export const planPhaseWork = (input: PhaseInput): PhaseWork => {
  const { phase, jobs, functions, state, leads } = input;
  const { calendar, problem, answer } = askedOf(input);
  const shown = jobs.map((job) => ({ ...job, slots: slotsWith(job, calendar) }));
  const base = {
    phase,
    perDay: calendar.perDay,
    from: calendar.from,
    hands: calendar.hands,
    taken: calendar.taken,
    jobs: shown,
    functions: [...functions],
  };
  if (answer === undefined)
    return { ...base, days: calendar.days, stuck: withoutUsualLinks(whyStuck(problem), jobs), orderBy: [] };
  const written = writtenOrder(problem, answer);
  const order = {
    ...written,
    starts: [...doneStarts(jobs, calendar, state), ...written.starts].sort(
      (a, b) => a.day - b.day || a.slot - b.slot || byCodeUnit(a.job, b.job),
    ),
  };
  const last = Math.max(order.cost.lastDay, ...calendar.taken.map(({ to }) => to));
  return {
    ...base,
    days: calendar.days.slice(0, last + 1 + daysShown),
    order,
    orderBy: orderByDays({ jobs, order, calendar, leads }),
  };
};
