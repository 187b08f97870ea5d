import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fullWork } from './backbone/full-work.ts';
import { layoutProblems } from './backbone/layout-problems.ts';
import type { Layout } from './backbone/problem.ts';
import { runnerUpLayout, solveLayout } from './backbone/solve-layout.ts';
import { aBoat } from './boat/a-boat.test-helper.ts';
import { indexBoat } from './boat/boat-index.ts';
import { joinsOf } from './joins/joins-of.ts';
import { plan } from './plan.ts';
import { planBuses } from './plan-buses.ts';

const [problem] = layoutProblems(aBoat().boat);
if (problem === undefined) throw new Error('The Tern has a bus.');
const best = [...solveLayout(problem, fullWork)].at(-1);
const next = best === undefined ? undefined : runnerUpLayout(problem, best, fullWork);

const pinOf = (layout: Layout | undefined) => ({
  grade: layout?.grade ?? 'light',
  walk: (layout?.walk ?? []).map((step) => ({ ...step, tees: [...step.tees] })),
  state: 'fixed' as const,
});

/** What the plan says of the bus with a layout settled, the best one known or not. */
const settled = (layout: Layout | undefined, known: readonly Layout[]) => {
  const { boat } = aBoat().with({ pins: { layouts: { nav: pinOf(layout) } } });
  const layouts = new Map(known.map((one) => [one.problem, one]));
  const [bus] = planBuses({
    index: indexBoat(boat),
    problems: layoutProblems(boat),
    layouts,
    joins: joinsOf(indexBoat(boat), 1),
  });
  return bus?.entry.layout;
};

test('a layout that is settled and is the cheapest could not have been bettered', () => {
  expect(settled(best, best === undefined ? [] : [best])).toMatchObject({
    status: 'pinned',
    cost: best?.cost,
    bound: best?.cost,
  });
});

test('of a dearer one that is settled the plan knows what another could have saved', () => {
  const told = settled(next, best === undefined ? [] : [best]);
  expect(told).toMatchObject({ status: 'pinned', cost: next?.cost, bound: best?.cost });
  expect(told?.cost).toBeGreaterThan(told?.bound ?? 0);
});

test('where nobody solved the problem nothing is known of it', () => {
  expect(settled(next, [])).toMatchObject({ status: 'pinned', bound: 0 });
});

test('a layout that is settled stands whatever its ways and places become, and the plan says what is broken', () => {
  const { boat } = aBoat().with({ pins: { layouts: { nav: pinOf(best) } } });
  const walked = new Set(best?.walk.flatMap(({ via }) => via ?? []));
  const places = boat.places.map(({ id }) => id);
  const way = fc.record({
    allows: fc.constantFrom(undefined, [], ['pair', 'drop'] as const),
    ends: fc.constantFrom(undefined, ...places.flatMap((one) => places.map((other) => [one, other] as const))),
  });
  const turns = fc.tuple(...boat.ways.map(() => way));
  const tees = fc.tuple(...boat.places.map(() => fc.boolean()));
  let broke = 0;
  fc.assert(
    fc.property(turns, tees, (ways, stands) => {
      const changed = {
        ...boat,
        places: boat.places.map((place, at) => ({ ...place, tees: stands[at] ?? true })),
        ways: boat.ways.map(({ allows: _, ...kept }, at) => {
          const { allows, ends = kept.ends } = ways[at] ?? {};
          const led: [string, string] = ends[0] === ends[1] ? kept.ends : [...ends];
          return { ...kept, ends: led, ...(allows === undefined ? {} : { allows: [...allows] }) };
        }),
      };
      const nav = plan(changed, new Map()).buses.find(({ id }) => id === 'nav');
      expect(nav?.layout.status).toBe('pinned');
      expect(nav?.walk.map(({ place }) => place)).toEqual(best?.walk.map(({ place }) => place));
      const mayNot = changed.ways.some(({ id, allows }) => walked.has(id) && allows !== undefined);
      if (mayNot) expect(nav?.layout.broken).not.toEqual([]);
      broke += mayNot ? 1 : 0;
    }),
    { numRuns: 30 },
  );
  expect(broke).toBeGreaterThan(10);
});
