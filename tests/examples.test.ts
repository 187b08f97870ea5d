import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { solveBoat } from '../src/cli/solve-boat.ts';
import { checkLayout } from '../src/core/backbone/check-layout.ts';
import { fullWork } from '../src/core/backbone/full-work.ts';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import type { Layout, LayoutMap } from '../src/core/backbone/problem.ts';
import { solveLayout } from '../src/core/backbone/solve-layout.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { frozen } from '../src/core/boat/frozen.test-helper.ts';
import { keptFor } from '../src/core/boat/kept-for.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { plan } from '../src/core/plan.ts';
import type { Finding, Plan } from '../src/core/plan-shape.ts';
import { quickPlan } from '../src/core/quick-plan.test-helper.ts';
import { planText } from '../src/papers/lists/plan-text.ts';
import { anExample } from './an-example.test-helper.ts';

const repository = resolve(import.meta.dirname, '..');
const names = readdirSync(join(repository, 'examples'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

/** Each bus of a boat with the layouts that a search of her comes by, one better than the other; searched once. */
const searched = keptFor((boat: Boat) =>
  layoutProblems(boat).map((problem) => ({ problem, layouts: [...solveLayout(problem, fullWork)] })),
);
const bestLayouts = (boat: Boat): LayoutMap =>
  new Map(
    searched(boat).flatMap(({ problem, layouts }) => layouts.map((layout): [string, Layout] => [problem.hash, layout])),
  );

/** The plan that the command line makes of a boat, made once. */
const solved = keptFor(async (boat: Boat) => frozen(await solveBoat(boat)));

/** A small generator of its own, so that a shuffle that fails can be run again. */
const numbersFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

const shuffledList = (list: readonly unknown[], next: () => number): unknown[] =>
  list
    .map((entry) => ({ entry, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ entry }) => entry);

/** Lists whose order says something: a pair of two ends in a fixed shape, steps of a walk, points and where they lie, runs of a trial. */
const ordered = new Set([
  'inLine',
  'walk',
  'side',
  'top',
  'changes',
  'outlineMm',
  'atMm',
  'airDraftParts',
  'runs',
  'tacks',
  'points',
]);

const shuffled = (value: unknown, next: () => number, key = ''): unknown => {
  if (Array.isArray(value)) {
    const inner = value.map((entry) => shuffled(entry, next));
    return ordered.has(key) ? inner : shuffledList(inner, next);
  }
  if (typeof value !== 'object' || value === null) return value;
  const entries = shuffledList(Object.entries(value), next) as [string, unknown][];
  return Object.fromEntries(entries.map(([name, entry]) => [name, shuffled(entry, next, name)]));
};

describe.each(names)('the demo boat %s', (name) => {
  const boat = anExample(name);

  test('gives the same plan, byte for byte, however its lists and keys are shuffled', () => {
    const bytes = JSON.stringify(quickPlan(boat));
    for (const seed of [1, 2, 3]) {
      const other = readBoat(JSON.stringify(shuffled(boat, numbersFrom(seed))));
      expect(JSON.stringify(plan(other, new Map()))).toBe(bytes);
    }
    // four whole plans of the largest boat take half a minute where the machine is busy
  }, 120_000);

  test('gives a plan that the exported schema accepts', async () => {
    const schema: object = JSON.parse(readFileSync(join(repository, 'schema/plan.schema.json'), 'utf8'));
    const validate = new Ajv2020({ strict: false }).compile(schema);
    expect(validate(await solved(boat)), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });

  test('gets better and better layouts, and the separate checker agrees on each', () => {
    for (const { problem, layouts } of searched(boat)) {
      let before = { cost: Number.POSITIVE_INFINITY, bound: 0 };
      for (const layout of layouts) {
        const { cost, broken } = checkLayout(problem, layout);
        expect(broken.length > 0, broken.join(' ')).toBe(layout.status === 'infeasible');
        expect(cost).toBe(layout.cost);
        expect(layout.bound).toBeLessThanOrEqual(layout.cost);
        expect(cost < before.cost || (cost === before.cost && layout.bound > before.bound)).toBe(true);
        before = layout;
      }
    }
  });

  test('reads at the terminal as it did before', async () => {
    const file = join(repository, `examples/${name}/expected/plan.txt`);
    const text = planText({ boat, plan: await solved(boat), file: `${name}.boat.json` });
    if (process.env.GOLDEN === 'write') writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });
});

/** Boats without a planted fault, and what each must have only from the second phase on, when its units come. */
const sound: [string, string[]][] = [
  ['gannet', []],
  ['sandpiper', ['ais-targets at plotter']],
  [
    'bonxie',
    ['pressure at mfd-chart', 'sonar-picture at mfd-chart', 'sonar-picture at mfd-wh-1', 'switching at ship-wh'],
  ],
];

describe.each(sound)('%s, soundly designed,', async (name, later) => {
  const boat = anExample(name);
  const last = await solved(boat);
  const first = plan(boat, bestLayouts(boat), 1);
  const missing = (planned: Plan): string[] =>
    planned.readings.filter(({ must, arrives }) => must && !arrives).map(({ reading, at }) => `${reading} at ${at}`);
  const isGrave = ({ level }: Finding): boolean => level === 'danger' || level === 'fault';

  test('gives no danger and no fault in the end', () => {
    expect(last.findings.filter(isGrave)).toEqual([]);
  });

  test('gives no fault in the first phase but for what comes in the second', () => {
    const grave = first.findings.filter(isGrave);
    expect(new Set(grave.map(({ rule }) => rule))).toEqual(new Set(later.map(() => 'readings/needed-but-missing')));
    expect(grave).toHaveLength(later.length);
  });

  test.each([
    ['first', first],
    ['last', last],
  ])('gives at most 9 doubts and 16 advices in the %s phase, but for what comes in the second', (_, { findings }) => {
    const own = findings.filter(({ rule }) => rule !== 'readings/needed-but-missing');
    expect(own.filter(({ level }) => level === 'doubt').length).toBeLessThanOrEqual(9);
    expect(own.filter(({ level }) => level === 'advice').length).toBeLessThanOrEqual(16);
  });

  test('has its work in an order by days, with its pumps never dark and nothing settled that cannot be', () => {
    const { phases = [] } = last.work ?? {};
    expect(phases.length).toBeGreaterThan(0);
    for (const { order, jobs } of phases) {
      const placed = new Set(order?.starts.map(({ job }) => job));
      expect(jobs.filter(({ id }) => !placed.has(id)).map(({ id }) => id)).toEqual([]);
      const hard = order?.dark.filter(({ function: one }) => one === 'bilge-pump' || one === 'high-water-alarm');
      expect(hard).toEqual([]);
    }
    expect(last.findings.filter(({ rule }) => rule.startsWith('work/'))).toEqual([]);
  });

  test('shows in the first phase every reading that must be there, but for what comes in the second', () => {
    expect(missing(first)).toEqual(later);
  });

  test('shows every one of its readings in the end', () => {
    expect(last.readings).toHaveLength(boat.needs.length);
    expect(last.readings.filter((entry) => !entry.arrives)).toEqual([]);
  });
});
