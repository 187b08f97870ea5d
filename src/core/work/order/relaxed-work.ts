import { skills, type WorkDay, type WorkItem, type WorkProblem } from './problem.ts';
import { someOrder } from './solve-work.ts';

/** Work for one question whether there is an order. */
const triedWork = 20_000;

/** Days more that are tried at most: a season. */
const mostDays = 128;

/** Whether an order was found that keeps everything. */
export const holds = (problem: WorkProblem): boolean => someOrder(problem, { work: triedWork }) !== undefined;

/** The fewest days with which a problem holds; absent where not even the most do. More days never do harm, so halves are enough. */
export const leastDays = (withMore: (days: number) => WorkProblem): number | undefined => {
  let enough = 1;
  while (enough <= mostDays && !holds(withMore(enough))) enough *= 2;
  if (enough > mostDays) return undefined;
  let tooFew = Math.floor(enough / 2);
  while (enough - tooFew > 1) {
    const middle = Math.floor((enough + tooFew) / 2);
    if (holds(withMore(middle))) enough = middle;
    else tooFew = middle;
  }
  return enough;
};

/** So many days more at the end, on which everybody works, of a kind; every day by which something must be done moves with them. */
export const withDays = (problem: WorkProblem, count: number, own: Partial<WorkDay>): WorkProblem => {
  const last = problem.days.at(-1);
  const day: WorkDay = {
    afloat: true,
    mast: 'up',
    light: last?.light ?? [0, 48],
    counts: last?.counts ?? [],
    hands: problem.hands.map(({ id }) => id),
    foul: false,
    ...own,
  };
  // What needs her afloat again has days after them.
  const more = [
    ...Array.from({ length: count }, () => day),
    ...(Object.keys(own).length === 0 ? [] : [0, 1].map(() => ({ ...day, afloat: true, mast: 'up' as const }))),
  ];
  return withLaterEnd({ ...problem, days: [...problem.days, ...more] }, more.length);
};

const changed = (problem: WorkProblem, change: (job: WorkItem) => WorkItem): WorkProblem => ({
  ...problem,
  jobs: problem.jobs.map(change),
});

export const withLaterEnd = (problem: WorkProblem, days: number): WorkProblem =>
  changed(problem, (job) => (job.notAfter === undefined ? job : { ...job, notAfter: job.notAfter + days }));

export const withoutEnd = (problem: WorkProblem): WorkProblem => changed(problem, ({ notAfter: _, ...job }) => job);

export const withoutPin = (problem: WorkProblem, ids: readonly string[]): WorkProblem =>
  changed(problem, ({ on, ...job }) => (on === undefined || ids.includes(job.id) ? job : { ...job, on }));

/** One hand more, who can everything and is there on each day on which anybody is. */
export const withHand = (problem: WorkProblem): WorkProblem => ({
  ...problem,
  hands: [...problem.hands, { id: '~', can: skills }],
  days: problem.days.map((day) => (day.hands.length === 0 ? day : { ...day, hands: [...day.hands, '~'] })),
});

export const withoutFunction = (problem: WorkProblem, ids: readonly string[]): WorkProblem => ({
  ...problem,
  functions: problem.functions.filter(({ id }) => !ids.includes(id)),
});

const softened = (problem: WorkProblem): WorkProblem => ({
  ...problem,
  functions: problem.functions.map((one) => ({ ...one, hard: false })),
});

const allDays = (problem: WorkProblem): WorkProblem => changed(problem, (job) => ({ ...job, notBefore: 0 }));
const unpinned = (problem: WorkProblem): WorkProblem => changed(problem, ({ on: _, ...job }) => job);

/** The same with nothing settled but the days on which jobs are to begin; and so on for each thing that may be settled. */
export const onlyPins = (problem: WorkProblem): WorkProblem => softened(allDays(withoutEnd(problem)));
export const onlyEnds = (problem: WorkProblem): WorkProblem => softened(allDays(unpinned(problem)));
export const onlyComing = (problem: WorkProblem): WorkProblem => softened(unpinned(withoutEnd(problem)));
export const onlyHard = (problem: WorkProblem): WorkProblem => allDays(unpinned(withoutEnd(problem)));
