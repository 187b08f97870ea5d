import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layoutProblems } from './backbone/layout-problems.ts';
import type { Layout, LayoutMap } from './backbone/problem.ts';
import { solveLayout } from './backbone/solve-layout.ts';
import type { Boat } from './boat/boat-schema.ts';
import { readBoat } from './boat/read-boat.ts';
import { planPanels } from './plan-panels.ts';
import { planPower } from './plan-power.ts';
import type { Plan } from './plan-shape.ts';
import { planWith, withoutLateParts } from './plan-with.ts';
import { ledRound, orderOf } from './shopping/order-of.ts';

const sandpiper = readBoat(
  readFileSync(new URL('../../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8'),
);
const aPlanner = () =>
  planWith({ ...withoutLateParts, order: orderOf, ledRound, power: planPower, panels: planPanels });

/** Steps a person may take with a boat, and which layouts are known then. */
interface Step {
  readonly without: number;
  readonly must: boolean;
  readonly at: number;
  readonly hasLayouts: boolean;
}

/** The boat with a need left out, the others wished for otherwise, and a unit at another place. */
const stepped = ({ without, must, at }: Step): Boat => ({
  ...sandpiper,
  needs: sandpiper.needs.filter((_, n) => n !== without).map((need) => ({ ...need, must })),
  kit: sandpiper.kit.map((unit, n) => (n === 0 ? { ...unit, place: sandpiper.places[at]?.id ?? unit.place } : unit)),
  ...(must ? { accepted: [] } : {}),
});

/** The boat that the steps start from, every need of hers kept. */
const still: Step = { without: -1, must: false, at: 0, hasLayouts: true };

const layouts = new Map<string, Layout>();
for (const problem of layoutProblems(stepped(still))) {
  for (const layout of solveLayout(problem, { work: 2000 })) layouts.set(problem.hash, layout);
}

const textOf = (planned: Plan): string => JSON.stringify(planned);

test('a planner that has planned other boats before says of each what one says that never did', () => {
  const aStep = fc.record({
    without: fc.nat(sandpiper.needs.length),
    must: fc.boolean(),
    at: fc.nat(2),
    hasLayouts: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(aStep, { minLength: 3, maxLength: 6 }), (steps) => {
      const known = aPlanner();
      for (const step of steps) {
        const given: LayoutMap = step.hasLayouts ? layouts : new Map();
        expect(textOf(known(stepped(step), given))).toBe(textOf(aPlanner()(stepped(step), given)));
      }
    }),
    { numRuns: 4, seed: 5 },
  );
});

test('an edit of a need lays nothing anew; moving a unit, and another layout, do', () => {
  let laid = 0;
  const counting = planWith({
    ...withoutLateParts,
    order: (input) => {
      laid += 1;
      return orderOf(input);
    },
  });
  counting(stepped(still), layouts);
  counting(stepped({ ...still, must: true }), layouts);
  counting(stepped({ ...still, without: 0 }), layouts);
  expect(laid).toBe(1);
  counting(stepped({ ...still, at: 1 }), layouts);
  expect(laid).toBe(2);
  counting(stepped(still), new Map());
  expect(laid).toBe(3);
  counting(stepped(still), layouts);
  expect(laid).toBe(3);
});
