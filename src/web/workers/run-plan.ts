import type { Budget, Layout, LayoutMap, Problem } from '../../core/backbone/problem.ts';
import { stoppedLayout } from '../../core/backbone/stopped-layout.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { type SearchWords, searchWords } from '../../papers/lists/search-words.ts';

/** The pictures a boat has at hand, by hash; undefined where nobody looked. */
export type Pictures = ReadonlySet<string> | undefined;

/** The three steps from a boat file to a plan. */
export interface PlanEngine {
  /** throws UserError for a bad file */
  readonly readBoat: (text: string) => Boat;
  readonly writeBoat: (boat: Boat) => string;
  readonly layoutProblems: (boat: Boat) => readonly Problem[] | Promise<readonly Problem[]>;
  readonly solveLayout: (problem: Problem, budget: Budget) => Generator<Layout>;
  /** a plan without what takes time, the first of all without its findings too, for the rules are much script */
  readonly quickPlan: (boat: Boat, layouts: LayoutMap, phase: undefined, pictures: Pictures) => Plan;
  readonly plan: (boat: Boat, layouts: LayoutMap, phase: undefined, pictures: Pictures) => Promise<Plan>;
  /** the plan but for what takes longest, shown until the whole one is there; absent where it would be no sooner */
  readonly nearPlan?: (boat: Boat, layouts: LayoutMap, phase: undefined, pictures: Pictures) => Promise<Plan>;
  /** title of each rule by its id; none while nothing was checked yet */
  readonly titles: () => ReadonlyMap<string, string>;
}

/** What a run needs from the place it runs in: a clock, a breath between slices, and whether it was called off or is to end with what it has. */
export interface RunHooks {
  readonly nowMs: () => number;
  readonly pause: () => Promise<void>;
  readonly isCancelled: () => boolean;
  /** whether each search is to end with the first layout it has */
  readonly isStopped: () => boolean;
  readonly onProgress: (words: SearchWords) => void;
  readonly onPlan: (plan: Plan, settled: boolean) => void;
}

export interface RunTask {
  readonly boat: Boat;
  readonly pictures?: Pictures;
  readonly engine: Pick<PlanEngine, 'layoutProblems' | 'solveLayout' | 'quickPlan' | 'plan' | 'nearPlan'>;
  readonly hooks: RunHooks;
  /** work for each backbone, counted in layouts tried */
  readonly budget: Budget;
  /** wall clock for all backbones together; what is cut short is marked `stopped` */
  readonly patienceMs: number;
  /** how long to wait for the best layouts before a plan with quick ones is shown */
  readonly firstAfterMs: number;
  /** what the whole plan took the last time; absent before it was made once */
  readonly usualMs?: number | undefined;
  /** layouts of earlier runs with the same budget by problem hash; those of this run that were not cut short are put in */
  readonly known: Map<string, Layout>;
}

/** Longest stretch without a breath, so that a cancel is heard within a frame or two. */
const sliceMs = 20;

/** Figures on the page change no faster than they can be read. */
const readableMs = 250;

/**
 * A whole plan that is there within this is waited for. The page takes longer to draw a plan than the worker to make it,
 * so that one drawn a moment before the whole one only holds that up.
 */
const soonMs = 250;

/** Layouts kept from run to run: more than any boat has buses, so that steps back find theirs, and a day of edits fills no memory. */
export const layoutsKept = 200;

/** Layouts known of these problems; they count as used last. */
const recalled = (known: Map<string, Layout>, problems: readonly Problem[]): Layout[] =>
  problems.flatMap(({ hash }) => {
    const layout = known.get(hash);
    if (layout === undefined) return [];
    known.delete(hash);
    known.set(hash, layout);
    return [layout];
  });

/** Keeps one layout more, the longest unused going first. */
const keepLayout = (known: Map<string, Layout>, hash: string, layout: Layout): void => {
  known.set(hash, layout);
  for (const oldest of known.keys()) {
    if (known.size <= layoutsKept) break;
    known.delete(oldest);
  }
};

interface Solving {
  readonly deadlineMs: number;
  readonly breathe: () => Promise<void>;
  /** says what is found so far */
  readonly say: (layout: Layout) => void;
}

const solveOne = async (task: RunTask, problem: Problem, { deadlineMs, breathe, say }: Solving) => {
  const { hooks, engine, budget } = task;
  let best: Layout | undefined;
  let breathMs = hooks.nowMs();
  let saidMs = breathMs;
  for (const layout of engine.solveLayout(problem, budget)) {
    best = layout;
    const nowMs = hooks.nowMs();
    if (nowMs > deadlineMs || hooks.isStopped()) return stoppedLayout(layout);
    if (nowMs - breathMs < sliceMs) continue;
    if (nowMs - saidMs >= readableMs) {
      say(layout);
      saidMs = nowMs;
    }
    await breathe();
    if (hooks.isCancelled()) return undefined;
    breathMs = hooks.nowMs();
  }
  return best;
};

/** What stands between a request and an answer: shows a plan with quick layouts once the wait gets long. */
const firstPlanShown = (task: RunTask, startMs: number, layouts: LayoutMap): (() => void) => {
  const { boat, pictures, engine, hooks, firstAfterMs } = task;
  let isShown = false;
  return () => {
    if (isShown || hooks.nowMs() - startMs < firstAfterMs) return;
    isShown = true;
    hooks.onPlan(engine.quickPlan(boat, layouts, undefined, pictures), false);
  };
};

/**
 * Plans one boat: gives a first plan with quick layouts if the best ones are long in coming, then the plan with the best
 * layouts found within the budget, or until it is stopped. Says nothing more once it is called off.
 */
export const runPlan = async (task: RunTask): Promise<void> => {
  const { boat, pictures, engine, hooks, known } = task;
  const startMs = hooks.nowMs();
  const asked = engine.layoutProblems(boat);
  const problems = asked instanceof Promise ? await asked : asked;
  if (hooks.isCancelled()) return;
  const layouts = new Map(recalled(known, problems).map((one) => [one.problem, one]));
  const open = problems.filter(({ hash }) => !layouts.has(hash));
  const showFirst = firstPlanShown(task, startMs, layouts);
  const breathe = async (): Promise<void> => {
    showFirst();
    await hooks.pause();
  };
  for (const [at, problem] of open.entries()) {
    showFirst();
    const say = (layout?: Layout): void =>
      hooks.onProgress(searchWords({ boat, problem, turn: at + 1, of: open.length, layout }));
    say();
    await hooks.pause();
    if (hooks.isCancelled()) return;
    const layout = await solveOne(task, problem, { deadlineMs: startMs + task.patienceMs, breathe, say });
    if (hooks.isCancelled()) return;
    if (layout === undefined) continue;
    layouts.set(problem.hash, layout);
    if (layout.status !== 'stopped') keepLayout(known, problem.hash, layout);
  }
  showFirst();
  if (engine.nearPlan !== undefined) {
    const isSoon = task.usualMs !== undefined && task.usualMs <= soonMs;
    const near = isSoon ? undefined : await engine.nearPlan(boat, layouts, undefined, pictures);
    if (hooks.isCancelled()) return;
    if (near !== undefined) hooks.onPlan(near, false);
    // whoever edits fast is heard before a whole plan is begun that nobody will see
    await hooks.pause();
    if (hooks.isCancelled()) return;
  }
  const plan = await engine.plan(boat, layouts, undefined, pictures);
  if (!hooks.isCancelled()) hooks.onPlan(plan, true);
};
