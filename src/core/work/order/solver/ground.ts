import type { WorkDay, WorkItem, WorkProblem } from '../problem.ts';

/** Half hours of a day of the clock. */
export const daySlots = 48;

/** A wait between two jobs: the other one by its number, and half hours of the clock. */
export interface Link {
  readonly job: number;
  readonly wait: number;
}

/** One job with everything by number, so that a search need not look anything up. */
export interface GroundJob {
  readonly slots: number;
  /** 0 for a job of at most a day, else the days it takes */
  readonly days: number;
  readonly preds: readonly Link[];
  readonly succs: readonly Link[];
  readonly first: number;
  readonly last: number;
  /** the last day on which it may begin */
  readonly lastBegin: number;
  readonly aloft: boolean;
  readonly apart: readonly number[];
  /** which hands may do it, as numbers of hands; one empty set where it takes none */
  readonly handSets: readonly (readonly number[])[];
  /** of each day the half hours of work it may lie in; none where the second is not above the first */
  readonly window: { readonly from: Int16Array; readonly to: Int16Array };
  /** it ends a way of some function; it gives one */
  readonly ends: boolean;
  readonly gives: boolean;
}

export interface GroundWay {
  readonly from: readonly number[];
  readonly until: readonly number[];
}

export interface GroundFunction {
  readonly hard: boolean;
  readonly ways: readonly GroundWay[];
  readonly counts: Uint8Array;
  /** counting days before each day */
  readonly countsBefore: Int32Array;
}

/** A problem made ready for a search: jobs, hands, functions by number, in the order of the problem. */
export interface Ground {
  readonly problem: WorkProblem;
  readonly perDay: number;
  readonly from: number;
  readonly days: number;
  readonly hands: number;
  readonly jobs: readonly GroundJob[];
  readonly functions: readonly GroundFunction[];
  /** by hand and day, whether the hand works on it */
  readonly present: readonly Uint8Array[];
  /** by day, whether work aloft is an ascent */
  readonly isMastUp: Uint8Array;
}

const numbersOf = (ids: readonly { readonly id: string }[]): ReadonlyMap<string, number> =>
  new Map(ids.map(({ id }, n) => [id, n]));

/** Whether the boat and the weather of a day allow a job. */
const isFit = (job: WorkItem, day: WorkDay): boolean =>
  (job.state === undefined || day.afloat === (job.state === 'afloat')) &&
  (job.mast === undefined || day.mast === job.mast) &&
  !((job.outside || job.aloft) && day.foul);

const windowOf = (job: WorkItem, { days, perDay, from }: WorkProblem): GroundJob['window'] => {
  const window = { from: new Int16Array(days.length), to: new Int16Array(days.length) };
  const isOpen = job.outside || job.aloft;
  for (const [n, day] of days.entries()) {
    const fit = isFit(job, day);
    window.from[n] = isOpen ? Math.max(0, day.light[0] - from) : 0;
    window.to[n] = fit ? (isOpen ? Math.min(perDay, day.light[1] - from) : perDay) : -1;
  }
  return window;
};

const mostOf = ({ from, to }: GroundJob['window']): number =>
  to.reduce((most, end, n) => Math.max(most, end - (from[n] ?? 0)), 0);

const handSetsOf = (job: WorkItem, { hands }: WorkProblem): readonly (readonly number[])[] => {
  if (job.slots === 0) return [[]];
  const numbers = hands.map((_, n) => n);
  const sets: number[][] =
    job.people === 1
      ? numbers.map((one) => [one])
      : numbers.flatMap((one) => numbers.slice(one + 1).map((other) => [one, other]));
  return sets.filter(
    (set) =>
      (job.hand === undefined || set.some((n) => hands[n]?.id === job.hand)) &&
      job.needs.every((skill) => set.some((n) => hands[n]?.can.includes(skill))),
  );
};

const functionsOf = (problem: WorkProblem, at: ReadonlyMap<string, number>): GroundFunction[] =>
  problem.functions.map(({ id, hard, ways }) => {
    const counts = new Uint8Array(problem.days.length);
    const countsBefore = new Int32Array(problem.days.length + 1);
    for (const [n, day] of problem.days.entries()) {
      counts[n] = day.counts.includes(id) ? 1 : 0;
      countsBefore[n + 1] = (countsBefore[n] ?? 0) + (counts[n] ?? 0);
    }
    const numbers = (ids: readonly string[]): number[] => ids.flatMap((job) => at.get(job) ?? []);
    return {
      hard,
      counts,
      countsBefore,
      // A way that hangs on a job nobody does never holds.
      ways: ways
        .filter(({ from }) => from.every((job) => at.has(job)))
        .map((way) => ({ from: numbers(way.from), until: numbers(way.until) })),
    };
  });

/** Makes a problem ready for a search. */
export const workGround = (problem: WorkProblem): Ground => {
  const at = numbersOf(problem.jobs);
  const functions = functionsOf(problem, at);
  const ending = new Set(functions.flatMap(({ ways }) => ways.flatMap(({ until }) => until)));
  const giving = new Set(functions.flatMap(({ ways }) => ways.flatMap(({ from }) => from)));
  const succs: Link[][] = problem.jobs.map(() => []);
  const preds: Link[][] = problem.jobs.map(({ after }) =>
    after.flatMap(({ job, wait }) => {
      const number = at.get(job);
      return number === undefined ? [] : [{ job: number, wait }];
    }),
  );
  const apart = problem.jobs.map(() => new Set<number>());
  for (const [job, links] of preds.entries()) {
    for (const { job: before, wait } of links) succs[before]?.push({ job, wait });
    for (const other of problem.jobs[job]?.apart ?? []) {
      const number = at.get(other);
      if (number === undefined || number === job) continue;
      apart[job]?.add(number);
      apart[number]?.add(job);
    }
  }
  const lastDay = problem.days.length - 1;
  const jobs = problem.jobs.map((job, n): GroundJob => {
    const window = windowOf(job, problem);
    const most = mostOf(window);
    return {
      slots: job.slots,
      days: job.slots > most && most > 0 ? Math.ceil(job.slots / most) : 0,
      preds: preds[n] ?? [],
      succs: succs[n] ?? [],
      first: Math.max(job.notBefore, job.on ?? 0),
      last: Math.min(lastDay, job.notAfter ?? lastDay),
      lastBegin: job.on ?? lastDay,
      aloft: job.aloft,
      apart: [...(apart[n] ?? [])].sort((a, b) => a - b),
      handSets: handSetsOf(job, problem),
      window,
      ends: ending.has(n),
      gives: giving.has(n),
    };
  });
  return {
    problem,
    perDay: problem.perDay,
    from: problem.from,
    days: problem.days.length,
    hands: problem.hands.length,
    jobs,
    functions,
    present: problem.hands.map(({ id }) => Uint8Array.from(problem.days, ({ hands }) => (hands.includes(id) ? 1 : 0))),
    isMastUp: Uint8Array.from(problem.days, ({ mast }) => (mast === 'up' ? 1 : 0)),
  };
};
