import { allClashes } from '../backbone/clashing-limits.ts';
import { limitShortfall } from '../backbone/limit-shortfall.ts';
import type { Problem } from '../backbone/problem.ts';
import { strandedDevices } from '../backbone/stranded-devices.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { boatText } from '../boat/boat-text.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { remember } from '../boat/remember.ts';
import { joinedRefit } from '../joins/joined-refit.ts';
import type { BusMend } from '../plan-shape.ts';
import { priceList } from '../prices/price-list.ts';
import { type Arrival, arrivals, needKey } from '../readings/arrivals.ts';
import type { Refit } from '../readings/refit.ts';
import { asCure } from './as-cure.ts';
import { type BusChange, busChanges } from './bus-changes.ts';
import { busHops, crossingWords } from './bus-hops.ts';
import { byCost, type Candidate } from './candidate.ts';
import { type Clash, clashesInWords, strandedInWords } from './clash-words.ts';
import { type Held, heldOf, heldTo, type MendedBus } from './held-limits.ts';
import {
  boatWith,
  type CostOf,
  changeCost,
  costNow,
  finePrice,
  type HeldChange,
  heldChanges,
  tryWork,
} from './try-bus-change.ts';
import { twoFeeds } from './two-feeds.ts';

/** Changes told, and of one kind. */
const atMost = { told: 5, ofKind: 2 } as const;

/** What is asked of every change: one boat in its last phase, with what arrives in it. */
interface MendTask {
  readonly refit: Refit;
  readonly phase: number;
  readonly buses: readonly MendedBus[];
}

/** One bus to be mended, and the boat she is of. */
interface MendAsk {
  readonly boat: Boat;
  readonly problem: Problem;
  readonly held: Held;
}

const clashesOf = (problem: Problem): readonly Clash[] => {
  const clashes = allClashes(problem, tryWork);
  return clashes.map((clash) =>
    clash.map((limit) => limitShortfall({ problem, limit, clashes, budget: tryWork }) ?? { limit }),
  );
};

/** All of a boat that layouts hang on, as text. */
const wiredText = (boat: Boat): string => {
  const { needs: _, accepted: __, labels: ___, orders: ____, ...wired } = boat;
  return boatText(wired);
};

const findFor = (ask: MendAsk) => {
  const problem = heldTo(ask.held, ask.problem);
  const clashes = clashesOf(problem);
  const costOf: CostOf = remember({
    most: 100,
    keyOf: ({ change: { says, edits }, budget }) => `${budget.work} ${says} ${JSON.stringify(edits)}`,
    find: (tried) => changeCost(ask, tried),
  });
  return {
    clashes,
    fed: twoFeeds({ index: indexBoat(ask.boat), problem, budget: tryWork }),
    stranded: clashes.length === 0 ? strandedDevices(problem) : [],
    costOf,
  };
};

/**
 * The same bus of the same boat is asked for at every edit elsewhere; what each change would cost is found once. The text of
 * a boat is long, so it is kept once for all her buses.
 */
const foundFor = remember({
  most: 3,
  keyOf: wiredText,
  find: (boat) =>
    remember({
      most: 12,
      keyOf: ({ problem, held }: Omit<MendAsk, 'boat'>) => `${problem.hash} ${held}`,
      find: (ask) => findFor({ ...ask, boat }),
    }),
});

const arrivalsOn = (boat: Boat, phase: number): Arrival[] => {
  return arrivals(joinedRefit(indexBoat(boat)), phase);
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

const busesOfUnits = (buses: readonly MendedBus[]): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { problem } of buses) {
    for (const kit of new Set(problem.devices.map(({ id }) => splitDotted(id).kit))) {
      found.set(kit, [...(found.get(kit) ?? []), problem.bus]);
    }
  }
  return found;
};

/** Those that lose no reading, as they are told: at most a handful and not many of one kind. */
const toldOf = (task: MendTask, held: readonly HeldChange[], readings: readonly Arrival[]): HeldChange[] => {
  const now = metOf(readings);
  const told: HeldChange[] = [];
  for (const own of held) {
    if (told.length >= atMost.told) break;
    if (told.filter(({ change }) => change.kind === own.change.kind).length >= atMost.ofKind) continue;
    const says = wordsWith(task, own.change, now);
    if (says !== undefined) told.push({ ...own, change: { ...own.change, says } });
  }
  return told;
};

const clashEntries = (clashes: readonly Clash[]): BusMend['clashes'] =>
  clashes.map((clash) => clash.map(({ limit, at = [], figure }) => ({ limit, at: [...at], ...figure })));

const mendOf = (task: MendTask, { layout }: MendedBus, ask: MendAsk): BusMend => {
  const problem = heldTo(ask.held, ask.problem);
  const { index } = task.refit;
  const { buses } = task;
  const { clashes, stranded, fed, costOf } = foundFor(ask.boat)(ask);
  const readings = arrivals(task.refit, task.phase);
  const changes = busChanges({
    index,
    prices: priceList(index.boat),
    problem,
    layout,
    clashes,
    hops: busHops(readings, problem),
    busesOf: busesOfUnits(buses),
  });
  const asked = { buses, held: ask.held, costOf };
  const told = toldOf(task, heldChanges(asked, changes), readings);
  const priced: Candidate[] = told.map((own) => ({ ...own.change, cost: finePrice(asked, own) }));
  const twice = fed === undefined ? [] : [{ ...fed, cost: fed.cost - costNow(buses, [problem.bus]) }];
  const words = { index, problem, held: ask.held };
  return {
    says: clashes.length === 0 ? strandedInWords(words, stranded) : clashesInWords(words, clashes),
    clashes: clashEntries(clashes),
    cures: [...priced, ...twice].sort(byCost).map(asCure),
  };
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
  const { boat } = task.refit.index;
  return new Map(
    broken
      .sort((one, other) => byCodeUnit(one.bus.problem.bus, other.bus.problem.bus))
      .map(({ bus, held }): [string, BusMend] => {
        const { problem } = bus;
        return [problem.bus, mendOf(task, bus, { boat, problem, held })];
      }),
  );
};
