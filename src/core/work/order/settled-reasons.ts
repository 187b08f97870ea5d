import type { Stuck } from '../../work-shape.ts';
import type { WorkProblem } from './problem.ts';
import { holds, leastDays, withHand, withLaterEnd, withoutEnd, withoutFunction, withoutPin } from './relaxed-work.ts';

export type Relax = Stuck['relax'][number];
export interface Reason {
  readonly why: Stuck['why'];
  readonly jobs?: readonly string[];
  readonly functions?: readonly string[];
  readonly relax: readonly Relax[];
}

/** Looks for one reason why a problem that has no order has none. */
export type Find = (problem: WorkProblem) => Reason | undefined;

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

export const moreHands = (problem: WorkProblem): Relax[] =>
  holds(withHand(problem)) ? [{ what: 'hand', about: [] }] : [];

/** What a person or a supplier settled, each of which may leave no order. */
export const settledReasons: readonly Find[] = [pins, doneBy, comesLate, darkNever];
