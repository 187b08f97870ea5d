import { lowestSourceV } from './backbone/panel-volts.ts';
import type { Layout, Problem } from './backbone/problem.ts';
import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { lastPhase } from './boat/phase.ts';
import type { BusEntry, LineEntry, PlanDraft, StandingJoin } from './plan-shape.ts';
import { feedLaying } from './power/feed-laying.ts';
import { type FeedTask, feedTasks } from './power/feed-tasks.ts';
import { type SizedFeed, sizeFeed } from './power/size-feed.ts';
import { busBehind, type FeedCable, type SolvedSupply, supplyNets } from './power/supply-net.ts';
import { type UnitLoad, unitLoads } from './power/unit-loads.ts';
import type { FeedEntry, LoadEntry, LoadSum, OldLoad, SupplyEntry } from './power-shape.ts';
import { planDrives } from './steering/plan-drives.ts';

/** What the direct current of a boat is planned from. */
export interface PowerInput {
  readonly index: BoatIndex;
  readonly joinsAt: (phase: number) => readonly StandingJoin[];
  readonly lines: readonly LineEntry[];
  readonly buses: readonly { readonly problem: Problem; readonly layout: Layout; readonly entry: BusEntry }[];
}

export type PowerParts = Pick<
  PlanDraft,
  'loads' | 'loadsBefore' | 'loadSums' | 'feeds' | 'supplies' | 'drives' | 'steering'
>;

const cableOf = ({ line, panel, served }: FeedTask, loopOhm: number): FeedCable => ({
  line: line.id,
  panel: panel.id,
  fed: served,
  loopOhm,
});

/** The cable of a feed as it was sized, with the leads to drives whose copper is known; one of unknown copper loses what is allowed. */
const sizedCable = ({ task, entry, loopOhm }: SizedFeed): FeedCable => ({
  ...cableOf(task, loopOhm ?? (task.steadyA > 0 ? entry.allowedV / task.steadyA : 0)),
  leads: (entry.leads ?? []).flatMap(({ line, to, runA, realDropV }) =>
    realDropV === undefined || runA === 0 ? [] : [{ line, to, loopOhm: realDropV / runA }],
  ),
});

/** Volts by node; a converter is a node of two nets, and has the volts at which it is fed. */
const voltsIn = (supplies: readonly SolvedSupply[]): ReadonlyMap<string, number> =>
  new Map(
    supplies.flatMap(({ source, answer }) =>
      answer.solved ? [...answer.voltsAt].filter(([node]) => node !== source) : [],
    ),
  );

/** What a unit draws as the plan tells it, without what only the solver needs. */
const loadEntry = ({ kit: _kit, most: _most, typicalW: _typicalW, ...entry }: UnitLoad): LoadEntry => entry;

const oldLoad = ({ port, from, typicalA, mostA, peakA }: UnitLoad): OldLoad => ({
  port,
  ...(from === undefined ? {} : { from }),
  typicalA,
  mostA,
  ...(peakA === undefined ? {} : { peakA }),
});

const sumsOf = (phase: number, loads: readonly UnitLoad[]): LoadSum[] => {
  const sums = new Map<string, { typicalA: number; mostA: number }>();
  for (const { from, typicalA, mostA } of loads) {
    if (from === undefined) continue;
    const sum = sums.get(from) ?? { typicalA: 0, mostA: 0 };
    sums.set(from, { typicalA: sum.typicalA + typicalA, mostA: sum.mostA + mostA });
  }
  return [...sums].map(([from, sum]) => ({ phase, from, ...sum })).sort((a, b) => byCodeUnit(a.from, b.from));
};

const supplyEntry = (index: BoatIndex, { source, net, answer }: SolvedSupply): SupplyEntry => {
  const sourceV = lowestSourceV(index, source);
  if (!answer.solved) return { source, sourceV, works: false, worst: answer.worst, at: [] };
  const named = new Set([
    ...index.panels.keys(),
    ...index.buses.keys(),
    ...index.boat.supply.dcdc.map(({ id }) => id),
    ...net.loads.map(({ node }) => node),
  ]);
  return {
    source,
    sourceV,
    works: true,
    sourceA: answer.sourceA,
    at: [...answer.voltsAt]
      .filter(([node]) => named.has(node) && node !== source)
      .map(([node, volts]) => ({ node, volts }))
      .sort((one, other) => byCodeUnit(one.node, other.node)),
  };
};

/** A feed with the volts that reach its far end, and what is lost on the whole way from its source. */
const withVolts = (
  { entry, task }: SizedFeed,
  volts: ReadonlyMap<string, number>,
  sourceV: number | undefined,
): FeedEntry => {
  const atEnd = task.served.flatMap((node) => volts.get(node) ?? []);
  if (atEnd.length === 0 || sourceV === undefined) return entry;
  const atEndV = Math.min(...atEnd);
  return { ...entry, atEndV, lostPct: (100 * (sourceV - atEndV)) / task.nominalV };
};

/**
 * The direct current of the whole boat: what every unit draws, its feed with wire and fuse, and one solve for each bank and
 * converter. Wires are picked with the volts at the panels as they are with everything drawing; then the boat is solved with
 * the wires picked. A wire of unknown copper counts as losing what is allowed.
 */
export const planPower = ({ index, joinsAt, lines, buses }: PowerInput): PowerParts => {
  const phases = Array.from({ length: lastPhase(index.boat) + 1 }, (_, phase) => phase);
  const byPhase = phases.map((phase) => unitLoads(index, phase, joinsAt(phase)));
  const loads = byPhase.at(-1) ?? [];
  const entries = buses.map(({ entry }) => entry);
  const tasks = feedTasks({ index, lines, loads, buses: entries });
  const behind = buses.map(busBehind);
  const bare = voltsIn(supplyNets({ index, loads, buses: behind, feeds: tasks.map((task) => cableOf(task, 0)) }));
  const laying = feedLaying(index, lines);
  const sized = tasks.map((task) =>
    sizeFeed({
      index,
      task,
      laying: laying(task.line),
      layingOf: laying,
      panelV: bare.get(task.panel.id) ?? 0,
      buses: entries,
    }),
  );
  const cables = sized.map(sizedCable);
  const supplies = supplyNets({ index, loads, buses: behind, feeds: cables });
  const volts = voltsIn(supplies);
  const sourceV = new Map(
    supplies.flatMap(({ source, net }) =>
      net.edges.map(({ to }): [string, number] => [to, lowestSourceV(index, source)]),
    ),
  );
  const feeds = sized.map((feed) => withVolts(feed, volts, sourceV.get(feed.task.panel.id)));
  const last = lastPhase(index.boat);
  return {
    loads: loads.map(loadEntry),
    loadsBefore: (byPhase[0] ?? []).map(oldLoad),
    loadSums: byPhase.flatMap((atPhase, phase) => sumsOf(phase, atPhase)),
    feeds,
    supplies: supplies.map((supply) => supplyEntry(index, supply)),
    ...planDrives({ index, phase: last, joins: joinsAt(last), feeds }),
  };
};
