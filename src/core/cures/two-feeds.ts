import { checkLayout } from '../backbone/check-layout.ts';
import { withoutLimits } from '../backbone/clashing-limits.ts';
import type { Budget, Layout, Problem } from '../backbone/problem.ts';
import { solveLayout } from '../backbone/solve-layout.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { Candidate } from './candidate.ts';

/** One part of a trunk with a feed of its own: the steps of the walk it has, and the step it is fed at. */
interface FedPart {
  readonly from: number;
  readonly to: number;
  readonly feed: number;
}

/** A part of a layout as a layout of its own, for the checker: its trunk, its tees, its feed. */
const partOf = (
  problem: Problem,
  layout: Layout,
  { from, to, feed }: FedPart,
): { problem: Problem; layout: Layout } => {
  const walk = layout.walk.slice(from, to + 1).map((step, at) => {
    const tees = step.tees.filter((tee) => tee !== 'feed');
    const { via, ...start } = step;
    const own = {
      ...(at === 0 || via === undefined ? start : step),
      tees: from + at === feed ? [...tees, 'feed'] : tees,
    };
    return own;
  });
  const ports = new Set(walk.flatMap(({ tees }) => tees));
  return {
    problem: {
      ...problem,
      devices: problem.devices.filter(({ id }) => ports.has(id)),
      // Only its volts and currents are asked of a part; the whole trunk keeps the lengths.
      places: problem.places.map((place) => ({ ...place, end: true, spares: 0 })),
    },
    layout: { ...layout, walk },
  };
};

const holds = (problem: Problem, layout: Layout, part: FedPart): boolean => {
  const own = partOf(problem, layout, part);
  const { cost } = checkLayout(own.problem, own.layout);
  return checkLayout(own.problem, { ...own.layout, cost, bound: 0 }).broken.length === 0;
};

/** The feed of one part that costs least and keeps its volts and currents; absent where none does. */
const feedOf = (
  problem: Problem,
  layout: Layout,
  from: number,
  to: number,
): { feed: number; leadMm: number } | undefined => {
  const reach = new Map(problem.feed.reach.map((entry) => [entry.place, entry.mm]));
  const steps = layout.walk.flatMap(({ place }, feed) => {
    const leadMm = feed < from || feed > to ? undefined : reach.get(place);
    return leadMm === undefined ? [] : [{ feed, leadMm }];
  });
  return steps
    .sort((one, other) => one.leadMm - other.leadMm || one.feed - other.feed)
    .find(({ feed }) => holds(problem, layout, { from, to, feed }));
};

/**
 * The trunk fed at two places, its power wires parted between them: each part is reckoned with its own feed and the loads on
 * its own side. It helps where volts or currents alone are in the way, and costs a feed and a lead more; the boat file cannot
 * say it, so it comes in words only. Absent where it does not help.
 */
export const twoFeeds = ({
  index,
  problem,
  budget,
}: {
  readonly index: BoatIndex;
  readonly problem: Problem;
  readonly budget: Budget;
}): (Candidate & { readonly kind: 'feeds'; readonly cost: number }) | undefined => {
  const easy = withoutLimits(problem, ['volts', 'current']);
  const layout = [...solveLayout(easy, budget)].at(-1);
  if (layout === undefined || layout.status === 'infeasible') return undefined;
  const { walk } = layout;
  const nameOf = (step: number): string => index.places.get(walk[step]?.place ?? '')?.name ?? '';
  for (let cut = 1; cut < walk.length; cut += 1) {
    const [fore, aft] = [feedOf(problem, layout, 0, cut - 1), feedOf(problem, layout, cut, walk.length - 1)];
    if (fore === undefined || aft === undefined) continue;
    const { feed, prices } = problem;
    const leads = (fore.leadMm + aft.leadMm) * feed.leadPerM;
    const cost = Math.round((layout.cost + 1000 * (prices.feed + prices.tee) + leads) / 1000);
    return {
      kind: 'feeds',
      says: `Feed the trunk at two places, ${nameOf(fore.feed)} and ${nameOf(aft.feed)}, with the positive wire parted between ${nameOf(cut - 1)} and ${nameOf(cut)}: each side then keeps its volts and currents. Both feeds from one panel, each with its own fuse; never join the positives again.`,
      edits: [],
      cost,
    };
  }
  return undefined;
};
