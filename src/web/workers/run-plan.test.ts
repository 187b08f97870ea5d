import { expect, test } from 'vitest';
import type { Layout, Problem } from '../../core/backbone/problem.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { PlanReply } from './protocol.ts';
import { type PlanEngine, runPlan } from './run-plan.ts';

// The run hands boat, problem and plan on without looking inside, so plain named objects stand for them.
const boat = { name: 'Boat' } as unknown as Boat;
const problem = { hash: 'h' } as unknown as Problem;
const layout = (cost: number, status: Layout['status']): Layout => ({
  problem: 'h',
  grade: 'mid',
  walk: [],
  cost,
  bound: 90,
  status,
  work: 1,
});

const engine = (over: Partial<PlanEngine> = {}): PlanEngine => ({
  readBoat: () => boat,
  layoutProblems: () => [problem],
  titles: new Map(),
  *solveLayout() {
    yield layout(120, 'gap');
    yield layout(100, 'gap');
    yield layout(90, 'proven');
  },
  // The layouts come back in `boat` so that a test can see what the plan was made from.
  plan: (_, layouts) =>
    ({ boat: [...layouts.values()].map((one) => `${one.cost} ${one.status}`).join() }) as unknown as Plan,
  ...over,
});

const run = async (over: { engine?: Partial<PlanEngine>; msPerLook?: number; cancelAtPause?: number } = {}) => {
  const posted: PlanReply[] = [];
  let clockMs = 0;
  let pauses = 0;
  await runPlan({
    revision: 7,
    boatText: '{}',
    engine: engine(over.engine),
    budget: { work: 10 },
    patienceMs: 1000,
    hooks: {
      nowMs: () => {
        clockMs += over.msPerLook ?? 1;
        return clockMs;
      },
      pause: async () => {
        pauses += 1;
      },
      isCancelled: () => pauses >= (over.cancelAtPause ?? Number.POSITIVE_INFINITY),
      post: (reply) => posted.push(reply),
    },
  });
  return posted;
};

const plans = (posted: readonly PlanReply[]) =>
  posted.flatMap((reply) => (reply.kind === 'answer' ? [[reply.plan.boat, reply.settled]] : []));

test('a quick plan comes first and the plan with the best layout last', async () => {
  expect(plans(await run())).toEqual([
    ['', false],
    ['90 proven', true],
  ]);
});

test('a boat without a backbone is settled at once', async () => {
  expect(plans(await run({ engine: { layoutProblems: () => [] } }))).toEqual([['', true]]);
});

test('a layout cut short by the clock is marked as stopped', async () => {
  expect(plans(await run({ msPerLook: 600 })).at(-1)).toEqual(['120 stopped', true]);
});

test('a plan called off posts no further answer', async () => {
  expect(plans(await run({ cancelAtPause: 1 }))).toEqual([['', false]]);
  expect(plans(await run({ msPerLook: 30, cancelAtPause: 2 }))).toEqual([['', false]]);
});

test('a bad file is refused with its sentence, its place and what to do', async () => {
  const readBoat = () => {
    throw new UserError({ says: 'This is not JSON.', place: 'line 3, column 7', whatToDo: 'Mend the comma there.' });
  };
  expect(await run({ engine: { readBoat } })).toEqual([
    {
      kind: 'refused',
      revision: 7,
      says: 'This is not JSON.',
      place: 'line 3, column 7',
      whatToDo: 'Mend the comma there.',
    },
  ]);
});

test('anything else that goes wrong is called a fault in the program', async () => {
  const plan = () => {
    throw new TypeError('cannot read x');
  };
  expect(await run({ engine: { plan } })).toEqual([{ kind: 'fault', revision: 7, detail: 'cannot read x' }]);
});
