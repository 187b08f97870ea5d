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

/** What the buses that a change touches cost then, in hundredths; absent where it does not fit or one of them has no layout. */
const costWith = (boat: Boat, change: BusChange): number | undefined => {
  const after = editedBoat(boat, change);
  if (after === undefined) return undefined;
  const touched = new Set(change.buses);
  const costs = layoutProblems(after)
    .filter(({ bus }) => touched.has(bus))
    .map(costOf);
  if (costs.some((cost) => cost === undefined)) return undefined;
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

/** One bus to be mended, with all that its layouts hang on as text: what is needed where is not among it. */
interface MendAsk {
  readonly boat: Boat;
  readonly bus: MendTask['buses'][number];
  readonly wired: string;
}

/** The same bus of the same boat is asked for at every edit elsewhere; what each change would cost is found once. */
const foundFor = remember({
  most: 16,
  keyOf: ({ bus, wired }: MendAsk) => `${bus.problem.hash} ${wired}`,
  find: ({ boat, bus: { problem } }) => {
    const cost = remember({
      most: 2 * atMost.tried,
      keyOf: ({ edits }: BusChange) => JSON.stringify(edits),
      find: (change) => costWith(boat, change),
    });
    return { clash: clashingLimits(problem, tryWork), costWith: cost };
  },
});

const mendOf = (task: MendTask, { bus, ...ask }: MendAsk): Mend => {
  const { problem, layout } = bus;
  const { index } = task.refit;
  const { clash, costWith: costOfChange } = foundFor({ bus, ...ask });
  const broken = brokenOf(problem, layout);
  const changes = busChanges({ index, prices: priceList(index.boat), problem, layout, broken }).slice(0, atMost.tried);
  const priced = changes.flatMap((change): Candidate[] => {
    const cost = costOfChange(change);
    return cost === undefined ? [] : [{ ...change, cost: cost + change.partsCost }];
  });
  const now = priced.length === 0 ? new Set<string>() : arrivedIn(task.refit, task.phase);
  const held = priced.filter((change) => {
    const after = editedBoat(index.boat, change);
    return after !== undefined && keepsReadings(after, task.phase, now);
  });
  const fed = twoFeeds({ index, problem, budget: tryWork });
  const cures = [...held, ...(fed === undefined ? [] : [fed])].sort(byCost).slice(0, atMost.told);
  return { clash, cures: cures.map(asCure) };
};

/**
 * For each bus that no layout was found for: a smallest set of limits that clash, and single changes of the boat that were
 * each made on a copy of it, gave every bus they touch a layout within its limits, and lost no reading; cheapest first, with
 * the price of the buses then and of new parts. By bus id.
 */
export const mendBuses = (task: MendTask): ReadonlyMap<string, Mend> => {
  const broken = task.buses.filter(({ layout }) => layout.status === 'infeasible');
  if (broken.length === 0) return new Map();
  const { boat } = task.refit.index;
  const wired = JSON.stringify([boat.joins, boat.kit, boat.supply, boat.prices]);
  return new Map(broken.map((bus) => [bus.problem.bus, mendOf(task, { boat, bus, wired })]));
};
