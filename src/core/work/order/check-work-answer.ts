import { brokenJobs } from './check-work-jobs.ts';
import type { WatchedFunction, WorkAnswer, WorkCost, WorkProblem, WorkStart } from './problem.ts';

/** What the checker found: the exact cost, and everything the order breaks, in words; empty when it holds. */
export interface WorkCheck {
  readonly cost: WorkCost;
  readonly broken: readonly string[];
}

const noCost: WorkCost = { dark: 0, lastDay: 0, ascents: 0 };

/**
 * Recomputes the cost of an order and tests every constraint of its problem. It shares no code with the search: it walks
 * through the calendar half hour by half hour, so that a mistake in one of them shows.
 */
export const checkWorkAnswer = (problem: WorkProblem, answer: WorkAnswer): WorkCheck => {
  if (answer.problem !== problem.hash) return { cost: noCost, broken: ['This order was made for other work.'] };
  const broken = [...brokenList(problem, answer.starts)];
  if (broken.length > 0) return { cost: noCost, broken };
  const { broken: ofJobs, lies } = brokenJobs(problem, answer.starts);
  broken.push(...ofJobs);
  if (broken.length > 0) return { cost: noCost, broken };
  const times = new Map([...lies].map(([job, { half, end }]) => [job, { half, end }]));
  let dark = 0;
  for (const one of problem.functions) {
    const own = darkHalfHours(problem, one, times);
    if (one.hard && own > 0) broken.push(`${one.id} is dark for ${own} half hours, and never may be.`);
    dark += own;
  }
  const cost = { dark, ...daysOf(problem, lies) };
  if (!isSame(cost, answer.cost)) broken.push(`The order says it costs ${said(answer.cost)}; it costs ${said(cost)}.`);
  if (compareWorkCosts(answer.bound, cost) > 0)
    broken.push(`The order says that none costs less than ${said(answer.bound)}; it costs ${said(cost)}.`);
  if (answer.status === 'proven' && !isSame(cost, answer.bound))
    broken.push('The order says it is proven, and its bound is lower.');
  return { cost, broken };
};

/** Below 0 where the first costs less. */
export const compareWorkCosts = (a: WorkCost, b: WorkCost): number =>
  a.dark - b.dark || a.lastDay - b.lastDay || a.ascents - b.ascents;

const isSame = (a: WorkCost, b: WorkCost): boolean => compareWorkCosts(a, b) === 0;
const said = ({ dark, lastDay, ascents }: WorkCost): string =>
  `${dark} half hours dark, last day ${lastDay}, ${ascents} ascents`;

const brokenList = (problem: WorkProblem, starts: readonly WorkStart[]): string[] => {
  const known = new Set(problem.jobs.map(({ id }) => id));
  const seen = new Map<string, number>();
  for (const { job } of starts) seen.set(job, (seen.get(job) ?? 0) + 1);
  return [
    ...[...seen].flatMap(([job, times]) => [
      ...(known.has(job) ? [] : [`There is no job ${job}.`]),
      ...(times > 1 ? [`${job} is done ${times} times.`] : []),
    ]),
    ...[...known].filter((job) => !seen.has(job)).map((job) => `${job} is never done.`),
  ];
};

/** The half hours of the calendar in which a function counts and no way of it holds. */
const darkHalfHours = (
  { days }: WorkProblem,
  one: WatchedFunction,
  times: ReadonlyMap<string, { readonly half: number; readonly end: number }>,
): number => {
  let dark = 0;
  for (const [day, { counts }] of days.entries()) {
    if (!counts.includes(one.id)) continue;
    for (let half = day * 48; half < day * 48 + 48; half += 1) {
      const isLit = one.ways.some(
        ({ from, until }) =>
          from.every((job) => (times.get(job)?.end ?? Number.POSITIVE_INFINITY) <= half) &&
          until.every((job) => (times.get(job)?.half ?? Number.POSITIVE_INFINITY) > half),
      );
      if (!isLit) dark += 1;
    }
  }
  return dark;
};

const daysOf = (
  { jobs, days }: WorkProblem,
  lies: ReadonlyMap<string, { readonly day: number; readonly lastDay: number }>,
): Pick<WorkCost, 'lastDay' | 'ascents'> => {
  const aloft = new Set<number>();
  for (const job of jobs.filter((entry) => entry.aloft)) {
    const at = lies.get(job.id);
    if (at === undefined) continue;
    for (let day = at.day; day <= at.lastDay; day += 1) if (days[day]?.mast === 'up') aloft.add(day);
  }
  return { lastDay: Math.max(0, ...[...lies.values()].map(({ lastDay }) => lastDay)), ascents: aloft.size };
};
