import type { Stuck } from '../../work-shape.ts';
import type { WorkItem, WorkProblem } from './problem.ts';
import {
  holds,
  leastDays,
  withDays,
  withHand,
  withLaterEnd,
  withoutEnd,
  withoutFunction,
  withoutPin,
} from './relaxed-work.ts';
import { circleOf } from './solver/circle-of.ts';
import { workGround } from './solver/ground.ts';

type Relax = Stuck['relax'][number];
interface Reason {
  readonly why: Stuck['why'];
  readonly jobs?: readonly string[];
  readonly functions?: readonly string[];
  readonly relax: readonly Relax[];
}

const stuck = ({ why, jobs = [], functions = [], relax }: Reason): Stuck => ({
  why,
  jobs: [...jobs],
  functions: functions as Stuck['functions'],
  relax: [...relax],
});

/**
 * Why there is no order, and what would have to give: every relaxation listed is enough by itself, which was tried by seeking an
 * order with it, and its days are the fewest that were enough. The list is empty where nothing alone is.
 */
export const stuckOf = (problem: WorkProblem): Stuck => {
  for (const find of [circle, nobodyCan, neverFit, pins, doneBy, comesLate, darkNever]) {
    const reason = find(problem);
    if (reason !== undefined) return stuck(reason);
  }
  return stuck({
    why: 'too-few-days',
    jobs: problem.jobs.map(({ id }) => id),
    relax: [...moreDays(problem), ...moreHands(problem)],
  });
};

const circle = (problem: WorkProblem): Reason | undefined => {
  const ids = circleOf(problem);
  if (ids.length === 0) return undefined;
  const relax = ids.flatMap((id, n): Relax[] => {
    const before = ids[(n + ids.length - 1) % ids.length] ?? id;
    const without = {
      ...problem,
      jobs: problem.jobs.map((job) =>
        job.id === id ? { ...job, after: job.after.filter((link) => link.job !== before) } : job,
      ),
    };
    return holds(without) ? [{ what: 'unpin', about: [id, before] }] : [];
  });
  return { why: 'circle', jobs: ids, relax };
};

const nobodyCan = (problem: WorkProblem): Reason | undefined => {
  const { jobs } = workGround(problem);
  const own = problem.jobs.filter((_, n) => jobs[n]?.handSets.length === 0).map(({ id }) => id);
  if (own.length === 0) return undefined;
  const free = {
    ...problem,
    jobs: problem.jobs.map(({ hand, ...job }) => (own.includes(job.id) || hand === undefined ? job : { ...job, hand })),
  };
  const isGiven = problem.jobs.some(({ id, hand }) => own.includes(id) && hand !== undefined);
  return {
    why: 'nobody-can',
    jobs: own,
    relax: [
      ...(isGiven && holds(free) ? [{ what: 'unpin' as const, about: own }] : []),
      ...(holds(withHand(free)) ? [{ what: 'hand' as const, about: own }] : []),
    ],
  };
};

/** Jobs that want a kind of day of which there is none. */
const neverFit = (problem: WorkProblem): Reason | undefined => {
  const { days, from, perDay } = problem;
  const some = (is: (job: WorkItem) => boolean): string[] => problem.jobs.filter(is).map(({ id }) => id);
  const isOpenAir = ({ outside, aloft, slots }: WorkItem): boolean => (outside || aloft) && slots > 0;
  const isLight = days.some(({ light, foul }) => !foul && Math.min(light[1], from + perDay) > Math.max(light[0], from));
  const lacks: readonly {
    why: Stuck['why'];
    jobs: string[];
    isMissing: boolean;
    what?: 'haul-out-days' | 'mast-days';
  }[] = [
    {
      why: 'never-ashore',
      jobs: some(({ state }) => state === 'ashore'),
      isMissing: days.every(({ afloat }) => afloat),
      what: 'haul-out-days',
    },
    {
      why: 'never-afloat',
      jobs: some(({ state }) => state === 'afloat'),
      isMissing: days.every(({ afloat }) => !afloat),
    },
    {
      why: 'mast-never-down',
      jobs: some(({ mast }) => mast === 'down'),
      isMissing: days.every(({ mast }) => mast === 'up'),
      what: 'mast-days',
    },
    {
      why: 'mast-never-up',
      jobs: some(({ mast }) => mast === 'up'),
      isMissing: days.every(({ mast }) => mast === 'down'),
    },
    { why: 'no-daylight', jobs: some(isOpenAir), isMissing: !isLight },
  ];
  const lack = lacks.find(({ jobs, isMissing }) => isMissing && jobs.length > 0);
  if (lack === undefined) return undefined;
  const { why, jobs, what } = lack;
  if (what === undefined)
    return { why, jobs, relax: why === 'no-daylight' ? leaveOut(problem, jobs) : moreDays(problem) };
  const days_ = leastDays((count) =>
    withDays(problem, count, what === 'haul-out-days' ? { afloat: false } : { mast: 'down' }),
  );
  return { why, jobs, relax: days_ === undefined ? [] : [{ what, about: jobs, days: days_ }] };
};

const leaveOut = (problem: WorkProblem, ids: readonly string[]): Relax[] => {
  const rest = { ...problem, jobs: problem.jobs.filter(({ id }) => !ids.includes(id)) };
  return holds(rest) ? [{ what: 'leave-out', about: [...ids] }] : [];
};

const pins = (problem: WorkProblem): Reason | undefined => {
  const pinned = problem.jobs.filter(({ on }) => on !== undefined).map(({ id }) => id);
  if (pinned.length === 0 || !holds(withoutPin(problem, pinned))) return undefined;
  const alone = pinned.filter((id) => holds(withoutPin(problem, [id])));
  const relax = alone.map((id): Relax => ({ what: 'unpin', about: [id] }));
  return {
    why: 'pins-clash',
    jobs: alone.length > 0 ? alone : pinned,
    relax: relax.length > 0 ? relax : [{ what: 'unpin', about: pinned }],
  };
};

const doneBy = (problem: WorkProblem): Reason | undefined => {
  const late = problem.jobs.filter(({ notAfter }) => notAfter !== undefined).map(({ id }) => id);
  if (late.length === 0 || !holds(withoutEnd(problem))) return undefined;
  const days = leastDays((count) => withLaterEnd(problem, count));
  return {
    why: 'done-by-too-early',
    jobs: [],
    relax: [...(days === undefined ? [] : [{ what: 'days' as const, about: [], days }]), ...moreHands(problem)],
  };
};

const comesLate = (problem: WorkProblem): Reason | undefined => {
  const waiting = problem.jobs.filter(({ notBefore }) => notBefore > 0);
  const sooner = (ids: readonly string[], days: number): WorkProblem => ({
    ...problem,
    jobs: problem.jobs.map((job) =>
      ids.includes(job.id) ? { ...job, notBefore: Math.max(0, job.notBefore - days) } : job,
    ),
  });
  const all = waiting.map(({ id }) => id);
  if (waiting.length === 0 || !holds(sooner(all, problem.days.length))) return undefined;
  const alone = waiting.flatMap(({ id, notBefore }): Relax[] => {
    const days = holds(sooner([id], notBefore)) ? leastDays((count) => sooner([id], count)) : undefined;
    return days === undefined ? [] : [{ what: 'earlier', about: [id], days }];
  });
  const together = alone.length > 0 ? undefined : leastDays((count) => sooner(all, count));
  return {
    why: 'comes-too-late',
    jobs: alone.length > 0 ? alone.flatMap(({ about }) => about) : all,
    relax: [...alone, ...(together === undefined ? [] : [{ what: 'earlier' as const, about: all, days: together }])],
  };
};

const darkNever = (problem: WorkProblem): Reason | undefined => {
  const hard = problem.functions.filter((one) => one.hard).map(({ id }) => id);
  if (hard.length === 0 || !holds(withoutFunction(problem, hard))) return undefined;
  const alone = hard.filter((id) => holds(withoutFunction(problem, [id])));
  return {
    why: 'dark-though-never',
    functions: alone.length > 0 ? alone : hard,
    relax: (alone.length > 0 ? alone.map((id) => [id]) : [hard]).map(
      (about): Relax => ({ what: 'temporary-feed', about }),
    ),
  };
};

const moreDays = (problem: WorkProblem): Relax[] => {
  const days = leastDays((count) => withDays(problem, count, {}));
  return days === undefined ? [] : [{ what: 'days', about: [], days }];
};

const moreHands = (problem: WorkProblem): Relax[] => (holds(withHand(problem)) ? [{ what: 'hand', about: [] }] : []);
