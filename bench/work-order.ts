import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { wiredBoat } from '../src/core/joins/wired-boat.ts';
import { nearPlan } from '../src/core/plan.ts';
import { jobsOf } from '../src/core/work/jobs/jobs-of.ts';
import { watchedOf } from '../src/core/work/jobs/watched-of.ts';
import { calendarOf } from '../src/core/work/order/calendar.ts';
import { checkWorkAnswer } from '../src/core/work/order/check-work-answer.ts';
import { plainOrder } from '../src/core/work/order/plain-order.ts';
import type { WorkAnswer, WorkCost, WorkProblem } from '../src/core/work/order/problem.ts';
import { quickAnswer } from '../src/core/work/order/quick-answer.ts';
import { refitWork } from '../src/core/work/order/refit-work.test-helper.ts';
import { solveWork } from '../src/core/work/order/solve-work.ts';
import { drawOf } from '../src/core/work/order/some-work.test-helper.ts';
import { lpWeights, workLp } from '../src/core/work/order/work-lp.test-helper.ts';
import { workProblem } from '../src/core/work/order/work-problem.ts';
import { fullOrderWork } from '../src/core/work/search-work.ts';
import { tell } from './figure.ts';
import { ownMs } from './own-ms.ts';

/**
 * The order of the work of refits, of the demo boats and drawn by lot, and beside it, in the same run, what one job after another
 * costs, and what a general solver of integer programmes comes to on the same work. Arguments: refits a size, seconds the general
 * solver may take for each.
 */
const [refits = 3, peerS = 20] = process.argv.slice(2).map(Number);

const said = (cost: WorkCost | undefined): string =>
  cost === undefined ? 'no end' : `${cost.dark / 2} h, day ${cost.lastDay}, ${cost.ascents} aloft`;

/** Time and cost of the whole work, of its first answer, and of a quick one. */
const measure = (name: string, problem: WorkProblem): WorkAnswer | undefined => {
  let started = ownMs();
  const quick = quickAnswer(problem);
  const quickMs = ownMs() - started;
  started = ownMs();
  let last: WorkAnswer | undefined;
  for (const answer of solveWork(problem, fullOrderWork)) last = answer;
  const ms = ownMs() - started;
  const broken = last === undefined ? [] : checkWorkAnswer(problem, last).broken;
  if (broken.length > 0) throw new Error(`The checker refuses an order: ${broken.join(' ')}`);
  tell({
    what: `${name}: the order of ${problem.jobs.length} jobs, to the proof or the end of the work`,
    value: ms,
    unit: 'ms',
    limit: 5000,
    note: `${last?.status} ${said(last?.cost)}, bound ${said(last?.bound)}; quick in ${quickMs.toFixed(0)} ms ${said(quick?.cost)}; one after another ${said(plainOrder(problem))}`,
  });
  return last;
};

for (const name of ['gannet', 'sandpiper', 'bonxie']) {
  const text = readFileSync(new URL(`../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8');
  const boat = readBoat(text);
  const asked = { index: indexBoat(wiredBoat(boat).boat), plan: nearPlan(boat, new Map()) };
  const all = jobsOf(asked);
  for (const [phase, functions] of watchedOf({ ...asked, jobs: all })) {
    const jobs = all.filter((job) => job.phase === phase);
    const work = boat.work ?? {};
    const first = work.starts?.find((start) => start.phase === phase)?.on;
    const calendar = calendarOf({ work, jobs, ...(first === undefined ? {} : { first }) });
    measure(`${name}, phase ${phase}`, workProblem({ phase, jobs, functions, calendar, work, done: new Map() }));
  }
}
for (const units of [9, 20, 50]) {
  for (let seed = 0; seed < refits; seed += 1)
    measure(`refit of ${units} units, ${seed}`, refitWork(drawOf(seed), { units, days: units * 2 + 14 }));
}

const highs = await loadHighs();
for (let seed = 0; seed < refits; seed += 1) {
  const problem = refitWork(drawOf(seed), { units: 1, days: 14, hands: 2 });
  const started = ownMs();
  const ours = measure(`refit of 1 unit, ${seed}`, problem);
  const oursMs = ownMs() - started;
  const lp = workLp(problem);
  const peerStarted = ownMs();
  const peer = lp === 'none' ? undefined : highs.solve(lp, { mip_rel_gap: 0, time_limit: peerS, output_flag: false });
  const { dark = 0, lastDay = 0, ascents = 0 } = ours?.cost ?? {};
  const cost = dark * lpWeights.dark + lastDay * lpWeights.day + ascents;
  tell({
    what: `refit of 1 unit, ${seed}: quick and whole`,
    value: oursMs,
    unit: 'ms',
    beside: [{ name: 'HiGHS on the same work', value: ownMs() - peerStarted }],
    note: `cost ${cost}, the solver ${peer?.Status} ${peer?.ObjectiveValue.toFixed(0)}`,
  });
}
