import { busFigures } from './backbone/bus-figures.ts';
import { busFuseA } from './backbone/bus-fuse.ts';
import { checkLayout } from './backbone/check-layout.ts';
import type { Layout, LayoutMap, Problem } from './backbone/problem.ts';
import { heuristicLayout } from './backbone/solve-layout.ts';
import type { BoatIndex } from './boat/boat-index.ts';
import { remember } from './boat/remember.ts';
import type { BusEntry, StandingJoin } from './plan-shape.ts';
import { busLoad } from './traffic/bus-load.ts';

/** One bus with its layout: what the plan says of it, and the layout its lines are drawn from. */
export interface PlannedBus {
  readonly problem: Problem;
  readonly layout: Layout;
  readonly entry: BusEntry;
}

/** A layout and the limits it breaks, in words. */
interface CheckedLayout {
  readonly layout: Layout;
  readonly broken: readonly string[];
}

/**
 * The walk a person fixed, bought or fitted: it is what the boat has, so it stands even where it breaks a limit. Where the
 * problem was solved all the same, its bound says what another layout could have saved.
 */
const pinnedLayout = (index: BoatIndex, problem: Problem, layouts: LayoutMap): CheckedLayout | undefined => {
  const pin = index.boat.pins?.layouts?.[problem.bus];
  if (pin === undefined) return undefined;
  const { grade, walk } = pin;
  const layout: Layout = { problem: problem.hash, grade, walk, cost: 0, bound: 0, status: 'pinned', work: 0 };
  const { cost } = checkLayout(problem, layout);
  const solved = givenLayout(problem, layouts)?.layout.bound ?? 0;
  return checked(problem, { ...layout, cost, bound: Math.min(cost, solved) });
};

/** Where the checker has nothing against a layout that came nearest, it holds after all, though nobody looked for a cheaper one. */
const checked = (problem: Problem, layout: Layout): CheckedLayout => {
  const { broken } = checkLayout(problem, layout);
  const holds = layout.status === 'infeasible' && broken.length === 0;
  return { layout: holds ? { ...layout, status: 'heuristic' } : layout, broken };
};

/** A bus that breaks its limits is laid out anew at every edit, though nothing about it has changed. */
const quickLayoutOf = remember({ most: 64, keyOf: ({ hash }: Problem) => hash, find: heuristicLayout });

/** The layout given for a problem, if the checker lets it pass. */
const givenLayout = (problem: Problem, layouts: LayoutMap): CheckedLayout | undefined => {
  const given = layouts.get(problem.hash);
  const found = given === undefined ? undefined : checked(problem, given);
  return found?.broken.length === 0 ? found : undefined;
};

const quickLayout = (problem: Problem): CheckedLayout | undefined => {
  const layout = quickLayoutOf(problem);
  return layout === undefined ? undefined : checked(problem, layout);
};

const plannedBus = ({
  index,
  problem,
  found: { layout, broken },
  joins,
}: {
  index: BoatIndex;
  problem: Problem;
  found: CheckedLayout;
  joins: readonly StandingJoin[];
}): PlannedBus => {
  const { hash } = problem;
  const { cost, bound, status, work } = layout;
  const { entry: figures, legs } = busFigures(problem, layout);
  const [first, last] = figures.ends;
  const fuseA = busFuseA(index, layout.grade);
  const entry: BusEntry = {
    ...figures,
    ...(legs.length === 0
      ? {}
      : { legs: legs.map(({ towards, ...leg }) => ({ towards: towards === 'start' ? first : last, ...leg })) }),
    ...(fuseA === undefined ? {} : { fuseA }),
    traffic: busLoad(index, problem.bus, joins),
    layout: { hash, cost, bound, status, work, broken: [...broken] },
  };
  return { problem, layout, entry };
};

/** Every bus that has devices and a layout: pinned first, else the given one, else the heuristic’s. */
export const planBuses = ({
  index,
  problems,
  layouts,
  joins,
}: {
  index: BoatIndex;
  problems: readonly Problem[];
  layouts: LayoutMap;
  joins: readonly StandingJoin[];
}): PlannedBus[] =>
  problems.flatMap((problem) => {
    if (problem.devices.length === 0) return [];
    const found = pinnedLayout(index, problem, layouts) ?? givenLayout(problem, layouts) ?? quickLayout(problem);
    return found === undefined ? [] : [plannedBus({ index, problem, found, joins })];
  });
