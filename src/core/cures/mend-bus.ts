import { checkLayout } from '../backbone/check-layout.ts';
import { clashingLimits } from '../backbone/clashing-limits.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import { solveLayout } from '../backbone/solve-layout.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { remember } from '../boat/remember.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { BusEntry, Cure } from '../plan-shape.ts';
import { arrivedIn } from '../readings/arrivals.ts';
import { type Refit, refitOf } from '../readings/refit.ts';
import { priceList } from '../shopping/price-list.ts';
import { type BusChange, busChanges } from './bus-changes.ts';
import { byCost, type Candidate } from './candidate.ts';
import { editedBoat } from './try-cure.ts';
import { twoFeeds } from './two-feeds.ts';

/** What keeps a bus from a layout, and the changes that would give it one, cheapest first. */
type Mend = NonNullable<BusEntry['mend']>;

/** Work for one try: enough to find a layout where there is one, little enough to try many. */
const tryWork = { work: 6000 } as const;

/** Changes tried for one bus, and those told. */
const atMost = { tried: 24, told: 5 } as const;

/** What is asked of every change: one boat in its last phase, with what arrives in it. */
interface MendTask {
  readonly refit: Refit;
  readonly phase: number;
  readonly buses: readonly { readonly problem: Problem; readonly layout: Layout }[];
}

const costOf = (problem: Problem): number | undefined => {
  let cost: number | undefined;
  for (const layout of solveLayout(problem, tryWork)) if (layout.status !== 'infeasible') cost = layout.cost;
  return cost;
};

/** What the buses that a change touches cost then, in hundredths; absent where one of them has no layout, or a reading is lost. */
const costWith = (task: MendTask, change: BusChange, now: ReadonlySet<string>): number | undefined => {
  const boat = editedBoat(task.refit.index.boat, change);
  if (boat === undefined) return undefined;
  const touched = new Set(change.buses);
  const costs = layoutProblems(boat)
    .filter(({ bus }) => touched.has(bus))
    .map(costOf);
  if (costs.some((cost) => cost === undefined) || !keepsReadings(boat, task.phase, now)) return undefined;
  return costs.reduce<number>((sum, cost) => sum + Math.round((cost ?? 0) / 1000), 0);
};

const keepsReadings = (boat: Boat, phase: number, now: ReadonlySet<string>): boolean => {
  const index = indexBoat(boat);
  const after = arrivedIn(
    refitOf(index, (at) => joinsOf(index, at)),
    phase,
  );
  return [...now].every((key) => after.has(key));
};

const brokenOf = (problem: Problem, layout: Layout): readonly string[] => {
  const { cost } = checkLayout(problem, layout);
  return checkLayout(problem, { ...layout, cost, bound: 0 }).broken;
};

const asCure = ({ says, edits, cost }: Candidate): Cure => ({
  says,
  edits: edits.map(({ edit, params }) => ({ edit, params: { ...params } })),
  ...(cost === undefined ? {} : { cost }),
});

const mendOf = (task: MendTask, { problem, layout }: MendTask['buses'][number]): Mend => {
  const { index } = task.refit;
  const [now, prices] = [arrivedIn(task.refit, task.phase), priceList(index.boat)];
  const clash = clashingLimits(problem, tryWork);
  const changes = busChanges({ index, prices, problem, layout, broken: brokenOf(problem, layout) }).slice(
    0,
    atMost.tried,
  );
  const held = changes.flatMap((change): Candidate[] => {
    const cost = costWith(task, change, now);
    return cost === undefined ? [] : [{ ...change, cost: cost + change.partsCost }];
  });
  const fed = twoFeeds({ index, problem, budget: tryWork });
  const cures = [...held, ...(fed === undefined ? [] : [fed])].sort(byCost).slice(0, atMost.told);
  return { clash, cures: cures.map(asCure) };
};

/** One bus to be mended, with all that a mend hangs on as text. */
interface MendAsk {
  readonly task: MendTask;
  readonly bus: MendTask['buses'][number];
  readonly wired: string;
}

/** The same bus of the same boat is asked for at every edit elsewhere. */
const mendFor = remember({
  most: 16,
  keyOf: ({ bus, wired }: MendAsk) => `${bus.problem.hash} ${wired}`,
  find: ({ task, bus }) => mendOf(task, bus),
});

/**
 * For each bus that no layout was found for: a smallest set of limits that clash, and single changes of the boat that were
 * each made on a copy of it, gave every bus they touch a layout within its limits, and lost no reading; cheapest first, with
 * the price of the buses then and of new parts. By bus id.
 */
export const mendBuses = (task: MendTask): ReadonlyMap<string, Mend> => {
  const broken = task.buses.filter(({ layout }) => layout.status === 'infeasible');
  if (broken.length === 0) return new Map();
  const { boat } = task.refit.index;
  const wired = JSON.stringify([boat.joins, boat.kit, boat.needs, boat.supply, boat.prices]);
  return new Map(broken.map((bus) => [bus.problem.bus, mendFor({ task, bus, wired })]));
};
