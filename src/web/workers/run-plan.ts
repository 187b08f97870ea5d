import type { Budget, Layout, LayoutMap, Problem } from '../../core/backbone/problem.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { PlanReply, Refusal } from './protocol.ts';

/** The three steps from a boat file to a plan. */
export interface PlanEngine {
  /** throws UserError for a bad file */
  readonly readBoat: (text: string) => Boat;
  readonly layoutProblems: (boat: Boat) => readonly Problem[];
  readonly solveLayout: (problem: Problem, budget: Budget) => Generator<Layout>;
  readonly plan: (boat: Boat, layouts: LayoutMap) => Plan;
  /** title of each rule by its id */
  readonly titles: ReadonlyMap<string, string>;
}

/** What a run needs from the place it runs in: a clock, a breath between slices, and whether it was called off. */
export interface RunHooks {
  readonly nowMs: () => number;
  readonly pause: () => Promise<void>;
  readonly isCancelled: () => boolean;
  readonly post: (reply: PlanReply) => void;
}

export interface RunTask {
  readonly revision: number;
  readonly boatText: string;
  readonly engine: PlanEngine;
  readonly hooks: RunHooks;
  /** work for each backbone, counted in layouts tried */
  readonly budget: Budget;
  /** wall clock for all backbones together; what is cut short is marked `stopped` */
  readonly patienceMs: number;
}

/** Longest stretch without a breath, so that a cancel is heard within a frame or two. */
const sliceMs = 20;

const solveOne = async (task: RunTask, problem: Problem, deadlineMs: number): Promise<Layout | undefined> => {
  const { hooks, engine, budget } = task;
  let best: Layout | undefined;
  let breathMs = hooks.nowMs();
  for (const layout of engine.solveLayout(problem, budget)) {
    best = layout;
    const nowMs = hooks.nowMs();
    if (nowMs > deadlineMs) return layout.status === 'proven' ? layout : { ...layout, status: 'stopped' };
    if (nowMs - breathMs < sliceMs) continue;
    await hooks.pause();
    if (hooks.isCancelled()) return undefined;
    breathMs = hooks.nowMs();
  }
  return best;
};

const planInSteps = async (task: RunTask): Promise<void> => {
  const { revision, engine, hooks } = task;
  const startMs = hooks.nowMs();
  const answer = (boat: Boat, layouts: LayoutMap, settled: boolean): void => {
    const plan = engine.plan(boat, layouts);
    hooks.post({ kind: 'answer', revision, boat, plan, titles: engine.titles, settled, ms: hooks.nowMs() - startMs });
  };
  const boat = engine.readBoat(task.boatText);
  const problems = engine.layoutProblems(boat);
  answer(boat, new Map(), problems.length === 0);
  const layouts = new Map<string, Layout>();
  for (const [at, problem] of problems.entries()) {
    const which = problems.length === 1 ? 'the backbone' : `backbone ${at + 1} of ${problems.length}`;
    hooks.post({ kind: 'progress', revision, says: `Looking for the cheapest way to lay ${which}.` });
    await hooks.pause();
    if (hooks.isCancelled()) return;
    const layout = await solveOne(task, problem, startMs + task.patienceMs);
    if (hooks.isCancelled()) return;
    if (layout !== undefined) layouts.set(problem.hash, layout);
  }
  if (problems.length > 0) answer(boat, layouts, true);
};

const refusalOf = ({ says, place, whatToDo, more }: UserError): Refusal => ({
  says,
  ...(place === undefined ? {} : { place }),
  whatToDo,
  ...(more.length === 0 ? {} : { more }),
});

/**
 * Plans one boat file: posts a first plan with quick layouts, then the plan with the best layouts found within the
 * budget. Posts `refused` for a bad file and `fault` for anything else that goes wrong; never throws.
 */
export const runPlan = async (task: RunTask): Promise<void> => {
  const { revision, hooks } = task;
  try {
    await planInSteps(task);
  } catch (error) {
    if (hooks.isCancelled()) return;
    if (error instanceof UserError) {
      hooks.post({ kind: 'refused', revision, ...refusalOf(error) });
      return;
    }
    hooks.post({ kind: 'fault', revision, detail: error instanceof Error ? error.message : String(error) });
  }
};
