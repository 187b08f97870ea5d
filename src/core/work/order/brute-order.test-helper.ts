import { brokenJobs } from './check-work-jobs.ts';
import type { WorkCost, WorkProblem } from './problem.ts';
import { type Choice, choicesOf } from './work-choices.test-helper.ts';

/**
 * The least cost of all orders there are, found by trying every half hour and every hand for every job; absent where none holds.
 * What holds by itself and beside each other one holds in all, so pairs are tried once.
 */
export const bruteOrder = (problem: WorkProblem): WorkCost | undefined => {
  const choices = problem.jobs.map(({ id }) => choicesOf(problem, id));
  const pairs = choices.map((own, n) =>
    choices.slice(0, n).map((other, m) => holdTogether(problem, [m, n], other, own)),
  );
  const darkOf = darkCounter(problem);
  const chosen: number[] = [];
  let best: WorkCost | undefined;
  const visit = (n: number): void => {
    if (n === choices.length) {
      const places = chosen.flatMap((at, job) => choices[job]?.[at] ?? []);
      const cost = costOf(problem, places, darkOf);
      if (cost !== undefined && (best === undefined || isLess(cost, best))) best = cost;
      return;
    }
    for (let at = 0; at < (choices[n]?.length ?? 0); at += 1) {
      if (!chosen.every((other, m) => pairs[n]?.[m]?.[other]?.[at] === true)) continue;
      chosen.push(at);
      visit(n + 1);
      chosen.pop();
    }
  };
  visit(0);
  return best;
};

const isLess = (a: WorkCost, b: WorkCost): boolean =>
  (a.dark - b.dark || a.lastDay - b.lastDay || a.ascents - b.ascents) < 0;

const holdTogether = (
  problem: WorkProblem,
  [m, n]: readonly [number, number],
  others: readonly Choice[],
  own: readonly Choice[],
): boolean[][] => {
  const two = { ...problem, jobs: problem.jobs.filter((_, at) => at === m || at === n) };
  return others.map((other) => own.map((one) => brokenJobs(two, [other.start, one.start]).broken.length === 0));
};

/** What chosen places cost; absent where something is dark that never may be. */
const costOf = (
  problem: WorkProblem,
  chosen: readonly Choice[],
  darkOf: (n: number, chosen: readonly Choice[]) => number,
): WorkCost | undefined => {
  let dark = 0;
  for (const [n, { hard }] of problem.functions.entries()) {
    const own = darkOf(n, chosen);
    if (hard && own > 0) return undefined;
    dark += own;
  }
  const days = new Set<number>();
  let lastDay = 0;
  for (const [n, one] of chosen.entries()) {
    lastDay = Math.max(lastDay, one.lastDay);
    if (problem.jobs[n]?.aloft !== true) continue;
    for (let day = one.day; day <= one.lastDay; day += 1) if (problem.days[day]?.mast === 'up') days.add(day);
  }
  return { dark, lastDay, ascents: days.size };
};

/** The half hours that a function is dark, one by one; known again by the places of the jobs it hangs on. */
const darkCounter = ({ jobs, functions, days }: WorkProblem): ((n: number, chosen: readonly Choice[]) => number) => {
  const known = functions.map(() => new Map<string, number>());
  const at = new Map(jobs.map(({ id }, n) => [id, n]));
  const numbers = (ids: readonly string[]): number[] => ids.map((id) => at.get(id) ?? 0);
  const ways = functions.map((one) => one.ways.map((way) => ({ from: numbers(way.from), until: numbers(way.until) })));
  return (n, chosen) => {
    const own = ways[n] ?? [];
    const spans = own.map(({ from, until }) => [
      Math.max(0, ...from.map((job) => chosen[job]?.end ?? 0)),
      Math.min(days.length * 48, ...until.map((job) => chosen[job]?.half ?? 0)),
    ]);
    const key = spans.join('/');
    const found = known[n]?.get(key);
    if (found !== undefined) return found;
    let dark = 0;
    for (const [day, { counts }] of days.entries()) {
      if (!counts.includes(functions[n]?.id ?? '')) continue;
      for (let half = day * 48; half < day * 48 + 48; half += 1)
        if (!spans.some(([on = 0, off = 0]) => on <= half && half < off)) dark += 1;
    }
    known[n]?.set(key, dark);
    return dark;
  };
};
