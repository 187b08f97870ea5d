import { allClashes } from '../backbone/clashing-limits.ts';
import { layoutProblems } from '../backbone/layout-problems.ts';
import { limitShortfall } from '../backbone/limit-shortfall.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import { keptLayout } from '../backbone/solve-layout.ts';
import { strandedDevices } from '../backbone/stranded-devices.ts';
import { isBeyondWarnLimits, withWarnLimits } from '../backbone/warn-limits.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { BusEntry, BusMend, Cure } from '../plan-shape.ts';
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

/** Work for all changes of one bus. */
const allWork = 120_000;

/** Changes told, and of one kind. */
const atMost = { told: 5, ofKind: 2 } as const;

/** A bus as planned; without a layout where no trunk can be laid. */
interface MendedBus {
  readonly problem: Problem;
  readonly layout?: Layout;
  readonly entry?: BusEntry;
}

/** The limits a bus is mended to keep: those it must, or the warn limits, with something in hand. */
type Held = 'must' | 'warn';

const heldTo = (held: Held, problem: Problem): Problem => (held === 'must' ? problem : withWarnLimits(problem));

/** What is wrong with a bus as planned; absent where nothing is, or a person settled its layout. */
const heldOf = ({ problem, layout, entry }: MendedBus): Held | undefined => {
  if (problem.devices.length === 0 || layout?.status === 'pinned') return undefined;
  if (layout === undefined || layout.status === 'infeasible') return 'must';
  return entry !== undefined && isBeyondWarnLimits(problem, entry) ? 'warn' : undefined;
};

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

/** What the buses that a change touches cost then, in hundredths, absent where it does not fit or one of them has no layout; and the work to know. */
interface Cost {
  readonly cost?: number;
  readonly work: number;
}

const costWith = ({ boat, held }: MendAsk, change: BusChange): Cost => {
  const after = boatWith(boat, change);
  if (after === undefined) return { work: 0 };
  const touched = new Set(change.buses);
  let [cost, work] = [0, 0];
  for (const problem of layoutProblems(after)) {
    if (!touched.has(problem.bus) || problem.devices.length === 0) continue;
    const kept = keptLayout(heldTo(held, problem), tryWork);
    work += kept.work;
    if (kept.layout === undefined) return { work };
    cost += inHundredths(kept.layout.cost);
  }
  return { cost, work };
};

/** One bus to be mended, with all that its layouts hang on as text: what is needed where is not among it. */
interface MendAsk {
  readonly boat: Boat;
  readonly problem: Problem;
  readonly held: Held;
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
  keyOf: ({ problem, held, wired }: MendAsk) => `${problem.hash} ${held} ${wired}`,
  find: (ask) => {
    const { boat } = ask;
    const problem = heldTo(ask.held, ask.problem);
    const clashes = clashesOf(problem);
    return {
      clashes,
      fed: twoFeeds({ index: indexBoat(boat), problem, budget: tryWork }),
      stranded: clashes.length === 0 ? strandedDevices(problem) : [],
      costWith: remember({
        most: 100,
        keyOf: ({ says, edits }: BusChange) => `${says} ${JSON.stringify(edits)}`,
        find: (change) => costWith(ask, change),
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
  costOf: (change: BusChange) => Cost,
): (Tried & { readonly change: BusChange })[] => {
  const done = new Set<string>();
  let left = allWork;
  const held = changes.flatMap((change) => {
    const { kind, says, edits, partsCost, insteadOf } = change;
    if (left <= 0 || (insteadOf !== undefined && done.has(insteadOf))) return [];
    const { cost, work } = costOf(change);
    // What was found before counts as if it had to be found again: equal boats give equal answers.
    left -= work;
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

const mendOf = (task: MendTask, { layout }: MendedBus, ask: MendAsk): BusMend => {
  const problem = heldTo(ask.held, ask.problem);
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
  const told = { index, problem, held: ask.held };
  const says = clashes.length === 0 ? strandedInWords(told, stranded) : clashesInWords(told, clashes);
  return { says, clashes: clashEntries(clashes), cures };
};

/** All of a boat that layouts hang on, as text. */
const wiredText = ({ boat }: Pick<BoatIndex, 'boat'>): string => {
  const { needs: _, accepted: __, labels: ___, orders: ____, ...wired } = boat;
  return JSON.stringify(wired);
};

/**
 * For each bus that no layout was found for, and for each that has one only beyond its warn limits: smallest sets
 * of limits that clash, and single changes of the boat that were each made on a copy of it, gave every bus they touch a
 * layout within its limits, and lost no reading; cheapest first, by what the buses then cost more than as they are planned
 * now, new parts with them. By bus id.
 */
export const mendBuses = (task: MendTask): ReadonlyMap<string, BusMend> => {
  const broken = task.buses.flatMap((bus) => {
    const held = heldOf(bus);
    return held === undefined ? [] : [{ bus, held }];
  });
  if (broken.length === 0) return new Map();
  const { index } = task.refit;
  const wired = wiredText(index);
  return new Map(
    broken
      .sort((one, other) => byCodeUnit(one.bus.problem.bus, other.bus.problem.bus))
      .map(({ bus, held }): [string, BusMend] => {
        const { problem } = bus;
        return [problem.bus, mendOf(task, bus, { boat: index.boat, problem, held, wired })];
      }),
  );
};
