import type { Stuck } from '../../work-shape.ts';
import { neverInTime } from './never-in-time.ts';
import type { WorkItem, WorkProblem } from './problem.ts';
import { holds, leastDays, onlyComing, onlyEnds, onlyHard, onlyPins, withDays, withHand } from './relaxed-work.ts';
import { type Find, moreHands, type Reason, type Relax, settledReasons } from './settled-reasons.ts';
import { circleOf } from './solver/circle-of.ts';
import { workGround } from './solver/ground.ts';

const stuck = ({ why, jobs = [], functions = [], relax }: Reason): Stuck => ({
  why,
  jobs: [...jobs],
  functions: functions as Stuck['functions'],
  relax: [...relax],
});

/**
 * Why there is no order, and what would have to give: every relaxation listed is enough by itself, which was tried by seeking an
 * order with it, and its days are the fewest that were enough. The list is empty where nothing alone is: then the first of
 * several reasons is told.
 */
export const stuckOf = (problem: WorkProblem): Stuck => {
  const reason = firstOf([circle, nobodyCan, neverFit, ...settledReasons], problem);
  return stuck(reason ?? oneOfSeveral(problem) ?? tooFewDays(problem));
};

const firstOf = (finds: readonly Find[], problem: WorkProblem): Reason | undefined => {
  for (const find of finds) {
    const reason = find(problem);
    if (reason !== undefined) return reason;
  }
  return undefined;
};

/** The first thing settled that leaves no order even with all the others given up. */
const oneOfSeveral = (problem: WorkProblem): Reason | undefined => {
  for (const only of [onlyPins, onlyEnds, onlyComing, onlyHard]) {
    const alone = only(problem);
    const reason = holds(alone) ? undefined : firstOf(settledReasons, alone);
    if (reason !== undefined) return { ...reason, relax: [] };
  }
  return undefined;
};

const tooFewDays = (problem: WorkProblem): Reason => ({
  why: 'too-few-days',
  jobs: neverInTime(problem),
  relax: [...moreDays(problem), ...moreHands(problem)],
});

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

const moreDays = (problem: WorkProblem): Relax[] => {
  const days = leastDays((count) => withDays(problem, count, {}));
  return days === undefined ? [] : [{ what: 'days', about: [], days }];
};
