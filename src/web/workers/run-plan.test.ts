import { expect, test } from 'vitest';
import type { Layout, LayoutMap, Problem } from '../../core/backbone/problem.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SearchWords } from '../../papers/lists/search-words.ts';
import { layoutsKept, type RunTask, runPlan } from './run-plan.ts';

// The run hands boat, problem and plan on without looking inside, so plain named objects stand for them.
const boat = { name: 'Boat', buses: [] } as unknown as Boat;
const problem = { hash: 'h', bus: 'nav' } as unknown as Problem;
const layout = (cost: number, status: Layout['status']): Layout => ({
  problem: 'h',
  grade: 'mid',
  walk: [],
  cost,
  bound: 90,
  status,
  work: 1,
});

/** The layouts come back in `boat` so that a test can see what the plan was made from. */
const planOf = (layouts: LayoutMap): Plan =>
  ({ boat: [...layouts.values()].map((one) => `${one.cost} ${one.status}`).join() }) as unknown as Plan;

const engine: RunTask['engine'] = {
  layoutProblems: () => [problem],
  *solveLayout() {
    yield layout(120, 'gap');
    yield layout(100, 'gap');
    yield layout(90, 'proven');
  },
  quickPlan: (_, layouts) => planOf(layouts),
  plan: async (_, layouts) => planOf(layouts),
};

interface Wish {
  readonly engine?: Partial<RunTask['engine']>;
  readonly msPerLook?: number;
  readonly cancelAtPause?: number;
  readonly stopAtPause?: number;
  readonly said?: SearchWords[];
  readonly firstAfterMs?: number;
  readonly known?: Map<string, Layout>;
  readonly usualMs?: number;
}

const run = async (wish: Wish = {}): Promise<[string, boolean][]> => {
  const plans: [string, boolean][] = [];
  let clockMs = 0;
  let pauses = 0;
  await runPlan({
    boat,
    engine: { ...engine, ...wish.engine },
    budget: { work: 10 },
    patienceMs: 1000,
    firstAfterMs: wish.firstAfterMs ?? 0,
    known: wish.known ?? new Map(),
    usualMs: wish.usualMs,
    hooks: {
      nowMs: () => {
        clockMs += wish.msPerLook ?? 1;
        return clockMs;
      },
      pause: async () => {
        pauses += 1;
      },
      isCancelled: () => pauses >= (wish.cancelAtPause ?? Number.POSITIVE_INFINITY),
      isStopped: () => pauses >= (wish.stopAtPause ?? Number.POSITIVE_INFINITY),
      onProgress: (words) => wish.said?.push(words),
      onPlan: (plan, settled) => plans.push([plan.boat, settled]),
    },
  });
  return plans;
};

test('a quick plan comes first and the plan with the best layout last', async () => {
  expect(await run()).toEqual([
    ['', false],
    ['90 proven', true],
  ]);
});

test('a boat without a backbone is shown at once, and settled when cures were looked for', async () => {
  expect(await run({ engine: { layoutProblems: () => [] } })).toEqual([
    ['', false],
    ['', true],
  ]);
});

test('a layout cut short by the clock is marked as stopped, and not kept for another time', async () => {
  const known = new Map<string, Layout>();
  expect((await run({ msPerLook: 600, known })).at(-1)).toEqual(['120 stopped', true]);
  expect(known.size).toBe(0);
});

test('layouts of a long day of edits are let go, those unused for longest first', async () => {
  const known = new Map<string, Layout>();
  const first = { hash: 'edit 0', bus: 'nav' } as unknown as Problem;
  for (let edit = 0; edit <= 2 * layoutsKept; edit += 1) {
    const another = { hash: `edit ${edit}`, bus: 'nav' } as unknown as Problem;
    await run({ known, engine: { layoutProblems: () => [first, another] } });
    expect(known.size).toBeLessThanOrEqual(layoutsKept);
  }
  expect([known.has('edit 0'), known.has('edit 1'), known.has(`edit ${2 * layoutsKept}`)]).toEqual([true, false, true]);
});

test('a search that is stopped settles with the layout it has, which is not kept for another time', async () => {
  const known = new Map<string, Layout>();
  expect(await run({ stopAtPause: 1, known })).toEqual([
    ['', false],
    ['120 stopped', true],
  ]);
  expect((await run({ stopAtPause: 2, msPerLook: 30, known })).at(-1)).toEqual(['100 stopped', true]);
  expect(known.size).toBe(0);
});

test('a layout that breaks a limit is not called a stopped one', async () => {
  const solveLayout = function* () {
    yield layout(120, 'infeasible');
  };
  expect((await run({ stopAtPause: 1, engine: { solveLayout } })).at(-1)).toEqual(['120 infeasible', true]);
});

test('a long search says the price it has and the price nothing can be under', async () => {
  const said: SearchWords[] = [];
  const solveLayout = function* () {
    for (const bound of [40_000_000, 50_000_000]) yield { ...layout(57_163_000, 'gap'), bound };
    yield layout(50_000_000, 'proven');
  };
  await run({ msPerLook: 130, said, engine: { solveLayout } });
  expect(said[0]?.found).toBeUndefined();
  expect(said.map(({ found }) => found)).toContain('571.63 EUR so far; none can be under 500.00 EUR.');
});

test('a plan called off gives no further plan', async () => {
  expect(await run({ cancelAtPause: 1 })).toEqual([['', false]]);
  expect(await run({ msPerLook: 30, cancelAtPause: 2 })).toEqual([['', false]]);
});

test('after an edit the quick plan is left out where the best one is soon found', async () => {
  expect(await run({ firstAfterMs: 400 })).toEqual([['90 proven', true]]);
  expect(await run({ firstAfterMs: 400, msPerLook: 90 })).toEqual([
    ['', false],
    ['90 proven', true],
  ]);
});

test('a layout found before is taken as it is, and nothing is looked for', async () => {
  const known = new Map<string, Layout>();
  await run({ known });
  const solveLayout = () => {
    throw new Error('nothing is to be solved');
  };
  expect(await run({ known, firstAfterMs: 400, engine: { solveLayout } })).toEqual([['90 proven', true]]);
});

test('a near plan is shown before the whole one, not settled yet', async () => {
  const nearPlan = async (): Promise<Plan> => ({ boat: 'near' }) as unknown as Plan;
  expect(await run({ engine: { nearPlan }, firstAfterMs: 1000 })).toEqual([
    ['near', false],
    ['90 proven', true],
  ]);
});

test('the near plan is left out where the whole one is usually soon there, and only there', async () => {
  const nearPlan = async (): Promise<Plan> => ({ boat: 'near' }) as unknown as Plan;
  const wish = { engine: { nearPlan }, firstAfterMs: 1000 };
  expect(await run({ ...wish, usualMs: 80 })).toEqual([['90 proven', true]]);
  expect(await run({ ...wish, usualMs: 900 })).toEqual([
    ['near', false],
    ['90 proven', true],
  ]);
});

test('a run that is called off before the whole plan is begun does not begin it', async () => {
  let begun = 0;
  const plan = async (): Promise<Plan> => {
    begun += 1;
    return planOf(new Map());
  };
  const nearPlan = async (): Promise<Plan> => planOf(new Map());
  const known = new Map([['h', layout(90, 'proven')]]);
  const wish = { engine: { nearPlan, plan }, firstAfterMs: 1000, known, usualMs: 80 };
  expect(await run({ ...wish, cancelAtPause: 1 })).toEqual([]);
  expect(begun).toBe(0);
  await run(wish);
  expect(begun).toBe(1);
});

test('nothing more is said where the run is called off while the near plan is shown', async () => {
  const nearPlan = async (): Promise<Plan> => ({ boat: 'near' }) as unknown as Plan;
  const known = new Map([['h', layout(90, 'proven')]]);
  expect(await run({ engine: { nearPlan }, firstAfterMs: 1000, known, cancelAtPause: 1 })).toEqual([['near', false]]);
});

test('problems that are only brought late are waited for', async () => {
  const layoutProblems = (): Promise<readonly Problem[]> => Promise.resolve([problem]);
  expect(await run({ engine: { layoutProblems }, firstAfterMs: 1000 })).toEqual([['90 proven', true]]);
});
