import type { BoatIndex } from '../boat/boat-index.ts';
import { limitValue } from '../boat/limit-value.ts';
import { awgConductors } from '../facts/conductors.ts';
import { feedInsulation } from '../facts/power-limits.ts';
import type { BusEntry, LineEntry } from '../plan-shape.ts';
import type { FeedEntry } from '../power-shape.ts';
import { ampacity } from './ampacity.ts';
import { ohmPerKmAt, workingC } from './conductor-ohm.ts';
import { dropBudget } from './drop-budget.ts';
import { dropByOhmV } from './drop-by-ohm.ts';
import { dropByRuleV } from './drop-rules.ts';
import type { FeedLaying } from './feed-laying.ts';
import type { FeedTask } from './feed-tasks.ts';
import { type ConductorPick, type NoConductor, pickConductor } from './pick-conductor.ts';
import { type FuseFamilyId, type FusePick, type NoFuse, pickFuse } from './pick-fuse.ts';
import { currentForBoth, type LeadShare, leadShare, sizeLeads } from './size-leads.ts';
import { type GivenWire, givenWire } from './wire-aboard.ts';
import { within } from './within.ts';

/** A feed sized, before the boat is solved with it; `loopOhm` is left out where its copper is not known. */
export interface SizedFeed {
  readonly task: FeedTask;
  readonly entry: FeedEntry;
  readonly loopOhm?: number;
}

export interface SizeAsk {
  readonly index: BoatIndex;
  readonly task: FeedTask;
  readonly laying: FeedLaying;
  /** how its leads to drives lie */
  readonly layingOf: (line: LineEntry) => FeedLaying;
  /** volts at its panel with the bank at its lowest and everything drawing */
  readonly panelV: number;
  readonly buses: readonly Pick<BusEntry, 'id' | 'fuseA'>[];
}

/** A feed asked for with the leads behind it. */
interface WireAsk extends SizeAsk {
  readonly share: LeadShare;
}

/** What protects the wire of a feed: the circuit it hangs on, or a fuse of its own where it leaves the panel. */
type Guard = Pick<FeedEntry, 'fuseA' | 'fuseBy' | 'fuseSlow' | 'whyNot'>;

const loopM = ({ line }: FeedTask): number => 2 * line.longestM;

const allowed = ({ index, task, panelV }: SizeAsk): Pick<FeedEntry, 'allowedV' | 'allowedBy'> => {
  const { nominalV, leastV } = task;
  const limitPct = limitValue(index.boat, 'feed-drop');
  const unit = leastV === undefined ? {} : { unit: { sourceV: panelV, leastV } };
  const { dropV, by } = dropBudget({ nominalV, limitPct, ...unit });
  return { allowedV: Math.max(0, dropV), allowedBy: by };
};

/** Hot where the feed or a lead of the same wire is, and bundled as the fuller of them. */
const layingWith = ({ laying, share }: WireAsk): FeedLaying => {
  const all = [laying, ...share.wires.flatMap((wire) => (wire.given === undefined ? wire.laying : []))];
  return {
    engineSpace: all.some(({ engineSpace }) => engineSpace),
    carryingConductors: Math.max(...all.map(({ carryingConductors }) => carryingConductors)),
  };
};

/** Volts that feed and lead of a drive may lose together at its peak. */
const peakLimitV = ({ index, task }: SizeAsk): number =>
  (task.nominalV * limitValue(index.boat, 'drive-peak-drop')) / 100;

/** The current a wire is picked with: that of its load, or as much as keeps the share of a drive’s peak too. */
const pickedForA = (ask: WireAsk, dropV: number): number => {
  const { steadyA, leads } = ask.task;
  const riseA = Math.max(0, ...leads.map(({ runA, peakA }) => peakA - runA));
  if (riseA === 0) return steadyA;
  return currentForBoth({
    runA: steadyA,
    peakA: steadyA + riseA,
    dropV,
    peakV: peakLimitV(ask) - ask.share.spentPeakV,
  });
};

const wireFor = (
  ask: WireAsk,
  { system, dropV, fuseA }: { readonly system: 'metric' | 'awg'; readonly dropV: number; readonly fuseA: number },
): ConductorPick | NoConductor =>
  pickConductor({
    system,
    currentA: pickedForA(ask, dropV),
    loopM: loopM(ask.task) + ask.share.moreLoopM,
    dropV,
    fuseA,
    insulationC: feedInsulation[system].value,
    sheathed: true,
    ...layingWith(ask),
  });

/** The rating that stands for a circuit: what a person settled, else what the boat file says of it. */
export const ratingOf = (index: BoatIndex, { panel, circuit }: Pick<FeedTask, 'panel' | 'circuit'>): number =>
  index.boat.pins?.fuses?.[`${panel.id}.${circuit.id}`]?.ratingA ?? circuit.ratingA;

/** Families tried for a load, those of a device first, then ever larger ones. */
const families: readonly (FuseFamilyId | undefined)[] = [
  undefined,
  'maxi-blade',
  'small-bolt-down',
  'large-bolt-down',
  'anl',
];

/** The fuse of its own that a feed would have. */
const ownFuse = ({ steadyA, peakA, statedA }: FeedTask): FusePick | NoFuse => {
  const ask = { steadyA, ...(peakA === undefined ? {} : { peakA }), ...(statedA === undefined ? {} : { statedA }) };
  const picks = families.map((family) => pickFuse({ ...ask, ...(family === undefined ? {} : { family }) }));
  return picks.find(({ fits }) => fits) ?? picks[0] ?? pickFuse(ask);
};

/**
 * The circuit a person gave a feed protects it, and its wire is picked for that, unless the maker wants less or the cable of
 * a bus bears less: then it has a fuse of its own beside the panel.
 */
const guardFor = ({ index, task, buses }: SizeAsk): Guard => {
  const circuitA = ratingOf(index, task);
  const byCircuit: Guard = { fuseA: circuitA, fuseBy: 'circuit' };
  if (task.kind === 'bus') {
    const mostA = buses.find(({ id }) => task.served.includes(id))?.fuseA;
    return mostA === undefined || circuitA <= mostA ? byCircuit : { fuseA: mostA, fuseBy: 'in-line' };
  }
  const own = ownFuse(task);
  if (!own.fits) return { ...byCircuit, whyNot: own.why };
  if (task.statedA === undefined || within({ value: circuitA, limit: task.statedA })) return byCircuit;
  return { fuseA: own.ratingA, fuseBy: 'in-line', ...(own.slow ? { fuseSlow: true } : {}) };
};

const figuresOf = (ask: SizeAsk, { areaMm2, ohmPerKm20, size }: Omit<GivenWire, 'wire'>): Partial<FeedEntry> => {
  const { task, laying } = ask;
  const flow = { currentA: task.steadyA, loopM: loopM(task) };
  const ohmPerKm = ohmPerKmAt({ ohmPerKm20, tempC: workingC(laying.engineSpace) });
  const dropV = dropByRuleV({ rule: 'iso', ...flow, areaMm2 });
  const realDropV = dropByOhmV({ ...flow, ohmPerKm });
  const insulationC = feedInsulation.metric.value;
  const carries = size === undefined ? undefined : ampacity({ system: 'metric', size, insulationC, ...laying });
  return {
    areaMm2,
    dropV,
    dropPct: (100 * dropV) / task.nominalV,
    realDropV,
    realDropPct: (100 * realDropV) / task.nominalV,
    ...(carries === undefined ? {} : { ampacityA: carries.allowedA }),
  };
};

/** The gauge that does the same, by its own rule and its least area; absent where none does. */
const gaugeFor = (ask: WireAsk, dropV: number, fuseA: number): string | undefined => {
  const pick = wireFor(ask, { system: 'awg', dropV, fuseA });
  return pick.fits ? pick.conductor.size : undefined;
};

/** The thinnest gauge whose area is not less. */
const gaugeOfArea = (areaMm2: number): string | undefined =>
  awgConductors.find((entry) => entry.areaMm2 >= areaMm2 * (1 - 1e-9))?.size;

/** The wire for what may be lost; where none does, the one for the share of the rules alone, so that there is one. */
const pickFor = (
  ask: WireAsk,
  dropV: number,
  fuseA: number,
): { pick: ConductorPick | NoConductor; missed: boolean } => {
  const first = wireFor(ask, { system: 'metric', dropV, fuseA });
  if (first.fits || first.why !== 'drop') return { pick: first, missed: false };
  const byRule = (ask.task.nominalV * limitValue(ask.index.boat, 'feed-drop')) / 100;
  return { pick: wireFor(ask, { system: 'metric', dropV: byRule, fuseA }), missed: true };
};

const pickedWire = (ask: WireAsk, dropV: number, guard: Guard): Partial<FeedEntry> => {
  const fuseA = guard.fuseA ?? 0;
  const { pick, missed } = pickFor(ask, dropV, fuseA);
  if (!pick.fits) return { whyNot: pick.why };
  const awg = gaugeFor(ask, dropV, fuseA);
  return {
    wire: 'picked',
    ...figuresOf(ask, pick.conductor),
    ...(awg === undefined ? {} : { awg }),
    asked: {
      drop: pick.byDrop,
      ampacity: pick.byAmpacity,
      ...(pick.leastSize.binds ? { least: pick.leastSize.size } : {}),
    },
    decidedBy: pick.decidedBy,
    ...(missed ? { whyNot: 'drop' as const } : {}),
  };
};

const standingWire = (ask: SizeAsk, given: GivenWire): Partial<FeedEntry> => {
  const awg = gaugeOfArea(given.areaMm2);
  return { wire: given.wire, ...figuresOf(ask, given), ...(awg === undefined ? {} : { awg }) };
};

const wireOf = (ask: WireAsk, dropV: number, guard: Guard): Partial<FeedEntry> => {
  const given = givenWire(ask.index, ask.task.line, ask.task.kind === 'bus');
  if (given === 'unknown') return { wire: 'aboard' };
  return given === undefined ? pickedWire(ask, dropV, guard) : standingWire(ask, given);
};

const loopOhmOf = (ask: SizeAsk, { areaMm2, realDropV }: Partial<FeedEntry>): number | undefined => {
  if (areaMm2 === undefined || realDropV === undefined) return undefined;
  const { steadyA } = ask.task;
  return steadyA > 0 ? realDropV / steadyA : 0;
};

/**
 * One feed with its wire and what protects it. A new wire is picked (docs/methods/conductor-size.md); one that lies aboard,
 * or that a person settled, is held against the same limits.
 */
export const sizeFeed = (ask: SizeAsk): SizedFeed => {
  const { task, laying, index } = ask;
  const budget = allowed(ask);
  const guard = guardFor(ask);
  const share = leadShare(index, task.leads, ask.layingOf);
  const wire = wireOf({ ...ask, share }, Math.max(0, budget.allowedV - share.spentV), guard);
  const loopOhm = loopOhmOf(ask, wire);
  const [to = ''] = task.served;
  const entry: FeedEntry = {
    line: task.line.id,
    to,
    panel: task.panel.id,
    circuit: task.circuit.id,
    nominalV: task.nominalV,
    typicalA: task.typicalA,
    loadA: task.steadyA,
    ...(task.peakA === undefined ? {} : { peakA: task.peakA }),
    lengthM: task.line.longestM,
    ...budget,
    ...wire,
    engineSpace: laying.engineSpace,
    carrying: laying.carryingConductors,
    circuitA: ratingOf(index, task),
    ...guard,
    ...(wire.whyNot === undefined ? {} : { whyNot: wire.whyNot }),
    ...(task.leastV === undefined ? {} : { leastV: task.leastV }),
  };
  const leads = sizeLeads({ feed: entry, nominalV: task.nominalV, peakV: peakLimitV(ask) }, share);
  return {
    task,
    ...(loopOhm === undefined ? {} : { loopOhm }),
    entry: leads.length === 0 ? entry : { ...entry, leads },
  };
};
