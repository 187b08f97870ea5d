import type { LayoutMap } from './backbone/problem.ts';
import { type BoatIndex, indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { splitDotted } from './boat/ids.ts';
import { isAboard } from './boat/phase.ts';
import { remember } from './boat/remember.ts';
import { editedBoat } from './cures/try-cure.ts';
import { notFitted } from './fitting/not-fitted.ts';
import { joinedRefit } from './joins/joined-refit.ts';
import { boatInPhase } from './phases/boat-in-phase.ts';
import { convertersAboard, forTheTimeBetween } from './phases/converters-aboard.ts';
import { changesIn, movedTerminators, type PhaseChange, phaseChanges, phasesOf } from './phases/phase-changes.ts';
import { phaseBus, phaseFeed } from './phases/phase-figures.ts';
import { boughtBeyond, phaseOrders, sumOfItems, type WholeOrder } from './phases/phase-orders.ts';
import { type PhaseReadings, phaseReadings, readingsByPhase } from './phases/phase-readings.ts';
import { provideNow } from './phases/provide-now.ts';
import type { PhaseEntry, PhaseItem, PhasesPart } from './phases-shape.ts';
import { planLaid } from './plan-laid.ts';
import { planPower } from './plan-power.ts';
import type { BusEntry, FeedEntry, LineEntry, PlanDraft, SeenEntry, WayEntry } from './plan-shape.ts';
import { arrivedIn, needKey } from './readings/arrivals.ts';
import type { Refit } from './readings/refit.ts';
import { ledRound, orderOf } from './shopping/order-of.ts';

/** A boat as laid, as far as her phases look at it. */
export interface LaidPhase extends WholeOrder {
  readonly buses: readonly BusEntry[];
  readonly ways: readonly WayEntry[];
  readonly feeds: readonly FeedEntry[];
}

/** What the phases are planned from: the boat as laid in the last, which is that of the plan, and what she had before. */
export interface PhasesInput {
  readonly refit: Refit;
  readonly layouts: LayoutMap;
  readonly last: LaidPhase & Pick<PlanDraft, 'loadSums'>;
  readonly before: readonly SeenEntry[];
}

/** A line between units that are there already, one of which leaves later: it lies aboard, whether somebody entered it or not. */
const isOld = (index: BoatIndex, leaves: readonly string[], { from, to }: LineEntry): boolean => {
  const units = [from, to].map((end) => splitDotted(end).kit);
  return units.some((unit) => leaves.includes(unit)) && units.every((unit) => index.kit.get(unit)?.fate !== 'comes');
};

/** Lays boats for their order and their power only; nothing is bought for the old lines of units that leave later. */
const laidWith = remember({
  most: 4,
  keyOf: (leaves: readonly string[]) => leaves.join(' '),
  find: (leaves) =>
    planLaid({
      fitting: notFitted,
      stray: () => ({
        compass: [],
        isolation: { hull: 'other', negatives: [], ways: [], shields: [], unknown: [] },
      }),
      power: planPower,
      panels: () => ({ banks: [], converters: [], panels: [], noPanel: [], mains: { chargers: [], ways: [] } }),
      energy: () => ({ energy: [], unknownDraws: [] }),
      traffic: () => ({ traffic: { waters: 'harbour', buses: [], lines: [] } }),
      order: (asked) => orderOf({ ...asked, lines: asked.lines.filter((line) => !isOld(asked.index, leaves, line)) }),
      ledRound,
      choices: () => new Map(),
    }),
});

const laidIn = (boat: Boat, phase: number, layouts: LayoutMap): LaidPhase => {
  const leaves = boat.kit.filter((unit) => unit.fate === 'goes' && isAboard(unit, phase)).map(({ id }) => id);
  const { buses, laid } = laidWith(leaves)(boatInPhase(boat, phase), layouts);
  return { ...laid, buses: buses.map(({ entry }) => entry) };
};

/** The boat as laid in each phase, the last as it is given. */
const everyPhase = (boat: Boat, phases: readonly number[], layouts: LayoutMap, last: LaidPhase): LaidPhase[] => [
  ...phases.slice(0, -1).map((phase) => laidIn(boat, phase, layouts)),
  last,
];

const asLaid = ({ needs: _, accepted: __, sources: ___, ...own }: Boat): Boat => ({ ...own, needs: [] });

/** Whether every need that is met in a phase is met in it with a change too, at a screen that is still aboard then. */
const keepsAll = (index: BoatIndex, readings: readonly PhaseReadings[]): boolean => {
  const refit = joinedRefit(index);
  return readings.every(({ phase, needs }) => {
    const after = arrivedIn(refit, phase);
    const isHere = (unit: string): boolean => refit.reachesIn(phase).network.nodesOf.has(unit);
    return needs.every((need) => !need.arrives || !isHere(need.at) || after.has(needKey(need)));
  });
};

/** The phases as they are, that a change is held against. */
interface Before {
  readonly readings: readonly PhaseReadings[];
  readonly between: readonly string[];
  /** what the orders of all phases cost, and how many limits the buses of all phases break */
  readonly cost: number;
  readonly broken: number;
}

const brokenIn = (laid: readonly LaidPhase[]): number =>
  laid.flatMap(({ buses }) => buses.flatMap((bus) => phaseBus(bus).broken)).length;

/** What the phases cost less with a change in the boat; nothing where it does not fit her, takes a reading away, or breaks a limit. */
const savedBy = (
  { refit, layouts, last }: PhasesInput,
  change: PhaseChange,
  { readings, cost, broken }: Before,
): number => {
  const after = editedBoat(refit.index.boat, change);
  if (after === undefined || !keepsAll(indexBoat(after), readings)) return 0;
  const boat = asLaid(after);
  const phases = readings.map(({ phase }) => phase);
  const isSame = change.edits.every(({ edit }) => edit !== 'remove-unit');
  const end = isSame ? last : laidIn(boat, phases.at(-1) ?? 1, layouts);
  const laid = everyPhase(boat, phases, layouts, end);
  if (brokenIn(laid) > broken) return 0;
  return cost - sumOfItems(phaseOrders(laid).flat()).cost;
};

const withoutUnits = (boat: Boat, units: readonly string[]): Boat => ({
  ...boat,
  kit: boat.kit.filter(({ id }) => !units.includes(id)),
});

const curesOf = (input: PhasesInput, at: Before): PhasesPart['costs']['cures'] =>
  phaseChanges(input.refit.index, { ...at, buses: input.last.buses })
    .map((change) => ({ ...change, saves: savedBy(input, change, at) }))
    .filter(({ saves }) => saves > 0)
    .sort((a, b) => b.saves - a.saves);

/** She as she stands after one phase. */
const phaseEntry = (
  { refit: { index }, last, before }: PhasesInput,
  readings: readonly PhaseReadings[],
  { own, laid, buy }: { readonly own: PhaseReadings; readonly laid: LaidPhase; readonly buy: PhaseItem[] },
): PhaseEntry => {
  const arrived = own.needs.filter(({ arrives }) => arrives);
  return {
    phase: own.phase,
    ...changesIn(index, own.phase),
    ...phaseReadings(own, readings, before),
    buses: laid.buses.map(phaseBus),
    loads: last.loadSums
      .filter(({ phase }) => phase === own.phase)
      .map(({ from, typicalA, mostA }) => ({ from, typicalA, mostA })),
    feeds: laid.feeds.flatMap((feed) =>
      phaseFeed(
        feed,
        last.feeds.find(({ line }) => line === feed.line),
      ),
    ),
    converters: convertersAboard(index, own.phase, arrived),
    buy,
    ...sumOfItems(buy),
  };
};

/** The phases of a refit, each planned as a whole boat; absent where she has only one. */
export const planPhases = (input: PhasesInput): PhasesPart | undefined => {
  const { refit, layouts, last } = input;
  const { index } = refit;
  const phases = phasesOf(index);
  if (phases.length < 2) return undefined;
  const boat = asLaid(index.boat);
  const all = everyPhase(boat, phases, layouts, last);
  const orders = phaseOrders(all);
  const readings = readingsByPhase(refit, phases);
  const entries = readings.map((own, n) =>
    phaseEntry(input, readings, { own, laid: all[n] ?? last, buy: orders[n] ?? [] }),
  );
  const between = forTheTimeBetween(
    index,
    entries.map(({ converters }) => converters),
  );
  const whole = between.length === 0 ? last : laidIn(withoutUnits(boat, between), phases.at(-1) ?? 1, layouts);
  const more = boughtBeyond(orders, whole.shopping);
  const costs = sumOfItems(more);
  const at = { readings, between, cost: sumOfItems(orders.flat()).cost, broken: brokenIn(all) };
  const earlier = entries.slice(0, -1).map(({ phase, buses }, n) => ({ phase, buses, ways: all[n]?.ways ?? [] }));
  return {
    phases: entries,
    atOnce: sumOfItems(whole.shopping),
    costs: {
      ...costs,
      more,
      cures: costs.cost > 0 ? curesOf(input, at) : [],
    },
    between,
    moved: movedTerminators(entries),
    provide: provideNow({ index, lines: last.lines, ways: last.ways, buses: last.buses, earlier }),
  };
};
