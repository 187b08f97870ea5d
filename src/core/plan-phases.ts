import type { LayoutMap } from './backbone/problem.ts';
import { type BoatIndex, indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { splitDotted } from './boat/ids.ts';
import { editedBoat } from './cures/try-cure.ts';
import { joinsOf } from './joins/joins-of.ts';
import { boatInPhase } from './phases/boat-in-phase.ts';
import { convertersAboard, forTheTimeBetween } from './phases/converters-aboard.ts';
import { changesIn, movedTerminators, type PhaseChange, phaseChanges, phasesOf } from './phases/phase-changes.ts';
import { boughtBeyond, phaseOrders, sumOfItems, type WholeOrder } from './phases/phase-orders.ts';
import { type PhaseReadings, phaseReadings, readingsByPhase } from './phases/phase-readings.ts';
import { provideNow } from './phases/provide-now.ts';
import type { PhaseBus, PhaseEntry, PhaseFeed, PhaseItem, PhasesPart } from './phases-shape.ts';
import { planLaid } from './plan-laid.ts';
import { planPower } from './plan-power.ts';
import type { BusEntry, FeedEntry, LineEntry, PlanDraft, SeenEntry, WayEntry } from './plan-shape.ts';
import { arrivedIn, needKey } from './readings/arrivals.ts';
import { type Refit, refitOf } from './readings/refit.ts';
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

/** A boat laid for her order and her power only. */
const laidOf = planLaid({
  stray: () => ({
    compass: [],
    isolation: { hull: 'other', negatives: [], ways: [], shields: [], unknown: [] },
  }),
  power: planPower,
  panels: () => ({ banks: [], converters: [], panels: [], noPanel: [], mains: { chargers: [], ways: [] } }),
  energy: () => ({ energy: [], unknownDraws: [] }),
  traffic: () => ({ traffic: { waters: 'harbour', buses: [], lines: [] } }),
  order: orderOf,
  ledRound,
  choices: () => new Map(),
});

const laidWhole = (boat: Boat, layouts: LayoutMap): LaidPhase => {
  const { buses, laid } = laidOf(boat, layouts);
  return { ...laid, buses: buses.map(({ entry }) => entry) };
};

/** Lines between units that are there already, one of which leaves: they lie aboard, whoever entered them or not. */
const isOld = (index: BoatIndex, { from, to }: LineEntry): boolean => {
  const fates = [from, to].map((end) => index.kit.get(splitDotted(end).kit)?.fate);
  return fates.includes('goes') && !fates.includes('comes');
};

/** Nothing is bought for lines that lie aboard until their unit leaves. */
const withoutOld = (index: BoatIndex, laid: LaidPhase): LaidPhase => {
  const old = new Set(laid.lines.filter((line) => isOld(index, line)).map(({ id }) => id));
  if (old.size === 0) return laid;
  return {
    ...laid,
    lines: laid.lines.filter(({ id }) => !old.has(id)),
    shopping: laid.shopping.filter(
      (entry) => !entry.for.some((id) => old.has(id)) || entry.for.some((id) => !old.has(id)),
    ),
  };
};

const busOf = ({ id, grade, lengthM, longestDropM, devices, len, ends, walk, volts, layout }: BusEntry): PhaseBus => {
  const lowest = volts.map(({ lowestV }) => lowestV);
  const spares = new Map<string, number>();
  for (const { place, tees } of walk) {
    const count = tees.filter((tee) => tee.startsWith('spare@')).length;
    if (count > 0) spares.set(place, (spares.get(place) ?? 0) + count);
  }
  return {
    id,
    grade,
    lengthM,
    longestDropM,
    devices,
    len,
    ends,
    ...(lowest.length === 0 ? {} : { lowestV: Math.min(...lowest) }),
    spares: [...spares].map(([place, count]) => ({ place, count })),
    broken: [...layout.broken],
  };
};

/** A feed in one phase beside the same feed in the last. */
const feedOf = (feed: FeedEntry, later: FeedEntry | undefined): PhaseFeed[] => {
  if (feed.areaMm2 === undefined) return [];
  const of = ({ loadA, areaMm2 = 0, fuseA }: FeedEntry) => ({
    loadA,
    areaMm2,
    ...(fuseA === undefined ? {} : { fuseA }),
  });
  const grows =
    later?.areaMm2 !== undefined && (later.areaMm2 > feed.areaMm2 || (later.fuseA ?? 0) > (feed.fuseA ?? 0));
  return [{ line: feed.line, ...of(feed), ...(grows ? { later: of(later) } : {}) }];
};

const everyPhase = (boat: Boat, phases: readonly number[], layouts: LayoutMap, last: LaidPhase): LaidPhase[] => {
  const index = indexBoat(boat);
  const earlier = phases.slice(0, -1).map((phase) => laidWhole(boatInPhase(boat, phase), layouts));
  return [...earlier, last].map((laid) => withoutOld(index, laid));
};

const asLaid = ({ needs: _, accepted: __, sources: ___, ...own }: Boat): Boat => ({ ...own, needs: [] });

/** Whether every need that is met in a phase is met in it with a change too, at a screen that is still aboard then. */
const keepsAll = (index: BoatIndex, readings: readonly PhaseReadings[]): boolean => {
  const refit = refitOf(index, (at) => joinsOf(index, at));
  return readings.every(({ phase, needs }) => {
    const after = arrivedIn(refit, phase);
    const isHere = (unit: string): boolean => refit.reachesIn(phase).network.nodesOf.has(unit);
    return needs.every((need) => !need.arrives || !isHere(need.at) || after.has(needKey(need)));
  });
};

/** What the phases cost less with a change in the boat; nothing where it does not fit her, or takes a reading away. */
const savedBy = (
  { refit, layouts, last }: PhasesInput,
  change: PhaseChange,
  { readings, cost }: { readonly readings: readonly PhaseReadings[]; readonly cost: number },
): number => {
  const after = editedBoat(refit.index.boat, change);
  if (after === undefined || !keepsAll(indexBoat(after), readings)) return 0;
  const boat = asLaid(after);
  const phases = readings.map(({ phase }) => phase);
  const isSame = change.edits.every(({ edit }) => edit !== 'remove-unit');
  const end = isSame ? last : laidWhole(boatInPhase(boat, phases.at(-1) ?? 1), layouts);
  return cost - sumOfItems(phaseOrders(everyPhase(boat, phases, layouts, end)).flat()).cost;
};

const withoutUnits = (boat: Boat, units: readonly string[], phase: number): Boat => {
  const kit = boat.kit.filter(({ id }) => !units.includes(id));
  return boatInPhase({ ...boat, kit }, phase);
};

const curesOf = (
  input: PhasesInput,
  at: { readonly readings: readonly PhaseReadings[]; readonly between: readonly string[]; readonly cost: number },
): PhasesPart['costs']['cures'] =>
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
    buses: laid.buses.map(busOf),
    loads: last.loadSums
      .filter(({ phase }) => phase === own.phase)
      .map(({ from, typicalA, mostA }) => ({ from, typicalA, mostA })),
    feeds: laid.feeds.flatMap((feed) =>
      feedOf(
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
  const whole = between.length === 0 ? last : laidWhole(withoutUnits(boat, between, phases.at(-1) ?? 1), layouts);
  const more = boughtBeyond(orders, whole.shopping);
  const costs = sumOfItems(more);
  const earlier = entries.slice(0, -1).map(({ phase, buses }, n) => ({ phase, buses, ways: all[n]?.ways ?? [] }));
  return {
    phases: entries,
    atOnce: sumOfItems(whole.shopping),
    costs: {
      ...costs,
      more,
      cures: costs.cost > 0 ? curesOf(input, { readings, between, cost: sumOfItems(orders.flat()).cost }) : [],
    },
    between,
    moved: movedTerminators(entries),
    provide: provideNow({ index, lines: last.lines, ways: last.ways, buses: last.buses, earlier }),
  };
};
