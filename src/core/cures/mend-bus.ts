import { allClashes, layoutWithin } from '../backbone/clashing-limits.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import { limitShortfall } from '../backbone/limit-shortfall.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import { strandedDevices } from '../backbone/stranded-devices.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { BusMend, Cure } from '../plan-shape.ts';
import { type Arrival, arrivals, needKey } from '../readings/arrivals.ts';
import { type Refit, refitOf } from '../readings/refit.ts';
import { priceList } from '../shopping/price-list.ts';
import { type BusChange, busChanges } from './bus-changes.ts';
import { busHops, crossingWords } from './bus-hops.ts';
import { byCost, type Candidate } from './candidate.ts';
import { type Clash, clashesInWords, strandedInWords } from './clash-words.ts';
import { editedBoat } from './try-cure.ts';
import { twoFeeds } from './two-feeds.ts';

/** Work for one try: enough to find a layout where there is one, little enough to try many. */
const tryWork = { work: 6000 } as const;

/** Changes told, and of one kind. */
const atMost = { told: 5, ofKind: 2 } as const;

/** A bus as planned; without a layout where no trunk can be laid. */
interface MendedBus {
  readonly problem: Problem;
  readonly layout?: Layout;
}

/** What is asked of every change: one boat in its last phase, with what arrives in it. */
interface MendTask {
  readonly refit: Refit;
  readonly phase: number;
  readonly buses: readonly MendedBus[];
}

/** A change that was tried: it gives its buses a layout and loses no reading. */
interface Tried extends Candidate {
  readonly kind: BusChange['kind'] | 'feeds';
}

const inHundredths = (cost: number): number => Math.round(cost / 1000);

const boatWith = (boat: Boat, change: BusChange): Boat | undefined => change.byHand?.(boat) ?? editedBoat(boat, change);

/** What the buses that a change touches cost then, in hundredths; absent where it does not fit or one of them has no layout. */
const costWith = (boat: Boat, change: BusChange): number | undefined => {
  const after = boatWith(boat, change);
  if (after === undefined) return undefined;
  const touched = new Set(change.buses);
  let cost = 0;
  for (const problem of layoutProblems(after)) {
    if (!touched.has(problem.bus) || problem.devices.length === 0) continue;
    const layout = layoutWithin(problem, tryWork);
    if (layout === undefined) return undefined;
    cost += inHundredths(layout.cost);
  }
  return cost;
};

/** One bus to be mended, with all that its layouts hang on as text: what is needed where is not among it. */
interface MendAsk {
  readonly boat: Boat;
  readonly problem: Problem;
  readonly wired: string;
}

const clashesOf = (problem: Problem): readonly Clash[] => {
  const clashes = allClashes(problem, tryWork);
  return clashes.map((clash) =>
    clash.map((limit) => limitShortfall({ problem, limit, clashes, budget: tryWork }) ?? { limit }),
  );
};

/** The same bus of the same boat is asked for at every edit elsewhere; what each change would cost is found once. */
const foundFor = remember({
  most: 16,
  keyOf: ({ problem, wired }: MendAsk) => `${problem.hash} ${wired}`,
  find: ({ boat, problem }) => {
    const clashes = clashesOf(problem);
    return {
      clashes,
      fed: twoFeeds({ index: indexBoat(boat), problem, budget: tryWork }),
      stranded: clashes.length === 0 ? strandedDevices(problem) : [],
      costWith: remember({
        most: 100,
        keyOf: ({ says, edits }: BusChange) => `${says} ${JSON.stringify(edits)}`,
        find: (change) => costWith(boat, change),
      }),
    };
  },
});

const arrivalsOn = (boat: Boat, phase: number): Arrival[] => {
  const index = indexBoat(boat);
  return arrivals(
    refitOf(index, (at) => joinsOf(index, at)),
    phase,
  );
};

const metOf = (readings: readonly Arrival[]): ReadonlySet<string> =>
  new Set(readings.filter(({ arrives }) => arrives).map(needKey));

/** The words of a change once it is made, with what crosses its bridge; absent where a reading is lost by it. */
const wordsWith = (
  { refit: { index }, phase }: MendTask,
  change: BusChange,
  now: ReadonlySet<string>,
): string | undefined => {
  const after = boatWith(index.boat, change);
  if (after === undefined) return undefined;
  const readings = arrivalsOn(after, phase);
  const met = metOf(readings);
  if (![...now].every((key) => met.has(key))) return undefined;
  return change.bridge === undefined ? change.says : `${change.says} ${crossingWords(readings, change.bridge)}`;
};

/** What the buses of a change cost as they are planned now, though they break their limits, in hundredths. */
const costNow = ({ buses }: MendTask, change: Pick<BusChange, 'buses'>): number =>
  buses.reduce(
    (sum, { problem, layout }) => (change.buses.includes(problem.bus) ? sum + inHundredths(layout?.cost ?? 0) : sum),
    0,
  );

/** Changes that give each bus they touch a layout, cheapest first; of changes that stand for each other the first. */
const heldChanges = (
  task: MendTask,
  changes: readonly BusChange[],
  costOf: (change: BusChange) => number | undefined,
): (Tried & { readonly change: BusChange })[] => {
  const done = new Set<string>();
  const held = changes.flatMap((change) => {
    const { kind, says, edits, partsCost, insteadOf } = change;
    const cost = insteadOf !== undefined && done.has(insteadOf) ? undefined : costOf(change);
    if (cost === undefined) return [];
    if (insteadOf !== undefined) done.add(insteadOf);
    return [{ kind, says, edits, cost: cost + partsCost - costNow(task, change), change }];
  });
  return held.sort(byCost);
};

const busesOfUnits = (buses: readonly MendedBus[]): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { problem } of buses) {
    for (const kit of new Set(problem.devices.map(({ id }) => splitDotted(id).kit))) {
      found.set(kit, [...(found.get(kit) ?? []), problem.bus]);
    }
  }
  return found;
};

const asCure = ({ says, edits, cost }: Candidate): Cure => ({
  says,
  edits: edits.map(({ edit, params }) => ({ edit, params: { ...params } })),
  ...(cost === undefined ? {} : { cost }),
});

/** Those that lose no reading, at most a handful and not many of one kind. */
const toldOf = (
  task: MendTask,
  held: readonly (Tried & { readonly change?: BusChange })[],
  now: ReadonlySet<string>,
) => {
  const told: Tried[] = [];
  for (const { change, ...own } of held) {
    if (told.length >= atMost.told) break;
    if (told.filter(({ kind }) => kind === own.kind).length >= atMost.ofKind) continue;
    const says = change === undefined ? own.says : wordsWith(task, change, now);
    if (says !== undefined) told.push({ ...own, says });
  }
  return told;
};

const clashEntries = (clashes: readonly Clash[]): BusMend['clashes'] =>
  clashes.map((clash) => clash.map(({ limit, at = [], figure }) => ({ limit, at: [...at], ...figure })));

const mendOf = (task: MendTask, bus: MendedBus, ask: MendAsk): BusMend => {
  const { problem, layout } = bus;
  const { index } = task.refit;
  const { clashes, stranded, fed, costWith: costOfChange } = foundFor(ask);
  const readings = arrivals(task.refit, task.phase);
  const changes = busChanges({
    index,
    prices: priceList(index.boat),
    problem,
    layout,
    clashes,
    hops: busHops(readings, problem),
    busesOf: busesOfUnits(task.buses),
  });
  const held = heldChanges(task, changes, costOfChange);
  const all: (Tried & { readonly change?: BusChange })[] =
    fed === undefined ? held : [...held, { ...fed, cost: fed.cost - costNow(task, { buses: [problem.bus] }) }];
  const cures = toldOf(task, all.sort(byCost), metOf(readings)).map(asCure);
  const told = { index, problem };
  const says = clashes.length === 0 ? strandedInWords(told, stranded) : clashesInWords(told, clashes);
  return { says, clashes: clashEntries(clashes), cures };
};

/** All of a boat that layouts hang on, as text. */
const wiredText = ({ boat }: Pick<BoatIndex, 'boat'>): string => {
  const { needs: _, accepted: __, labels: ___, orders: ____, ...wired } = boat;
  return JSON.stringify(wired);
};

/**
 * For each bus that no layout was found for: a smallest set of limits that clash, and single changes of the boat that were
 * each made on a copy of it, gave every bus they touch a layout within its limits, and lost no reading; cheapest first, by
 * what the buses then cost more than as they are planned now, new parts with them. By bus id.
 */
export const mendBuses = (task: MendTask): ReadonlyMap<string, BusMend> => {
  const broken = task.buses.filter(
    ({ problem, layout }) => problem.devices.length > 0 && (layout === undefined || layout.status === 'infeasible'),
  );
  if (broken.length === 0) return new Map();
  const { index } = task.refit;
  const wired = wiredText(index);
  const mends = broken
    .sort((one, other) => byCodeUnit(one.problem.bus, other.problem.bus))
    .map((bus): [string, BusMend] => [
      bus.problem.bus,
      mendOf(task, bus, { boat: index.boat, problem: bus.problem, wired }),
    ]);
  return new Map(mends);
};
