import type { Failure } from '../blackouts-shape.ts';
import { splitDotted } from '../boat/ids.ts';
import type { LineEntry } from '../plan-shape.ts';
import { type BusHit, type BusState, type BusTrunk, busState } from './bus-trunk.ts';
import type { DarkNodes } from './dark-nodes.ts';
import { plugOf } from './line-between.ts';
import { busByPort, type SupplyGraph, type WiredBoat } from './supply-graph.ts';

/** What a failure hits itself, before anything follows from it. */
export interface Hit {
  readonly failures: readonly Failure[];
  /** nodes of the supply graph */
  readonly nodes: readonly string[];
  readonly units: readonly string[];
  readonly lines: readonly string[];
  readonly gaps: readonly { readonly bus: string; readonly gap: number }[];
  readonly tees: readonly { readonly bus: string; readonly at: number }[];
  readonly shorted: readonly string[];
}

/** What a failure does to the boat: what is dark, what is cut, and the buses that are not whole any more. */
export interface Effect {
  readonly dark: ReadonlySet<string>;
  readonly cut: ReadonlySet<string>;
  /** states of the buses that are not whole; a bus that carries nothing has no port in any part */
  readonly buses: ReadonlyMap<string, BusState>;
  readonly nodes: ReadonlySet<string>;
}

/** One boat, ready for failure after failure. */
export interface FailureModel {
  readonly wired: WiredBoat;
  readonly graph: SupplyGraph;
  readonly darkNodes: DarkNodes;
  readonly trunks: ReadonlyMap<string, BusTrunk>;
  readonly lines: ReadonlyMap<string, LineEntry>;
  /** nodes of the supply graph that a line brings power to */
  readonly leadsOf: ReadonlyMap<string, readonly string[]>;
  /** port at the end of a drop, and drop of a port */
  readonly portOfDrop: ReadonlyMap<string, { readonly bus: string; readonly port: string }>;
  readonly dropOfPort: ReadonlyMap<string, string>;
  /** drops of each bus, and the lines that end at a unit and neither feed it nor are trunk */
  readonly dropsOfBus: ReadonlyMap<string, readonly { readonly line: string; readonly port: string }[]>;
  readonly linesOfUnit: ReadonlyMap<string, readonly string[]>;
  readonly busOf: ReadonlyMap<string, string>;
}

const dropsOf = (wired: WiredBoat, busOf: ReadonlyMap<string, string>): Map<string, { bus: string; port: string }> => {
  const byEnds = new Map([...busOf].map(([port, bus]) => [`${bus} ${plugOf(wired.index, port)}`, { bus, port }]));
  const found = new Map<string, { bus: string; port: string }>();
  for (const { id, kind, from, to } of wired.lines) {
    if (kind !== 'drop') continue;
    const end = byEnds.get(`${from} ${to}`) ?? byEnds.get(`${to} ${from}`);
    if (end !== undefined) found.set(id, end);
  }
  return found;
};

const listed = <Entry>(
  pairs: readonly (readonly [key: string, entry: Entry])[],
): ReadonlyMap<string, readonly Entry[]> => {
  const lists = new Map<string, Entry[]>();
  for (const [key, entry] of pairs) {
    const list = lists.get(key);
    if (list === undefined) lists.set(key, [entry]);
    else list.push(entry);
  }
  return lists;
};

/** A boat made ready for `effectOf`. */
export const failureModel = ({
  wired,
  graph,
  darkNodes,
  trunks,
}: Pick<FailureModel, 'wired' | 'graph' | 'darkNodes' | 'trunks'>): FailureModel => {
  const busOf = busByPort(wired.joins);
  const leadsOf = new Map<string, string[]>();
  for (const node of graph.keys()) {
    if (!node.startsWith('lead:')) continue;
    const line = node.slice('lead:'.length, node.indexOf(' '));
    leadsOf.set(line, [...(leadsOf.get(line) ?? []), node]);
  }
  const portOfDrop = dropsOf(wired, busOf);
  return {
    wired,
    graph,
    darkNodes,
    trunks,
    lines: new Map(wired.lines.map((line) => [line.id, line])),
    leadsOf,
    portOfDrop,
    dropOfPort: new Map([...portOfDrop].map(([line, { port }]) => [port, line])),
    dropsOfBus: listed([...portOfDrop].map(([line, { bus, port }]) => [bus, { line, port }])),
    linesOfUnit: listed(
      wired.lines
        .filter(({ kind }) => kind !== 'feed' && kind !== 'trunk')
        .flatMap(({ id, from, to }) => [from, to].map((end) => [splitDotted(end).kit, id] as const)),
    ),
    busOf,
  };
};

interface OpenHit {
  readonly gaps: number[];
  readonly tees: number[];
  readonly off: string[];
  shorted: boolean;
}

/** The gaps on both sides of a unit that the trunk runs through: out of work it parts the bus. */
const inLineGaps = ({ wired: { index }, trunks, busOf }: FailureModel, kit: string): Hit['gaps'] => {
  const ports = index.sheetOf.get(kit)?.inLine?.map((port) => `${kit}.${port}`) ?? [];
  const buses = new Set(ports.map((port) => busOf.get(port)));
  const [bus] = buses;
  const trunk = trunks.get(bus ?? '');
  const places = ports.flatMap((port) => trunk?.placeOf.get(port) ?? []);
  if (bus === undefined || buses.size > 1 || places.length < 2) return [];
  return [
    { bus, gap: Math.min(...places) },
    { bus, gap: Math.max(...places) + 1 },
  ];
};

const busHits = (model: FailureModel, hit: Hit): ReadonlyMap<string, BusHit> => {
  const found = new Map<string, OpenHit>();
  const at = (bus: string): OpenHit => {
    const known = found.get(bus) ?? { gaps: [], tees: [], off: [], shorted: false };
    found.set(bus, known);
    return known;
  };
  for (const { bus, gap } of hit.gaps) at(bus).gaps.push(gap);
  for (const { bus, at: tee } of hit.tees) at(bus).tees.push(tee);
  for (const bus of hit.shorted) at(bus).shorted = true;
  for (const kit of hit.units) for (const { bus, gap } of inLineGaps(model, kit)) at(bus).gaps.push(gap);
  for (const line of hit.lines) {
    const drop = model.portOfDrop.get(line);
    if (drop !== undefined) at(drop.bus).off.push(drop.port);
    for (const { bus, gapOf } of model.trunks.values()) {
      const gap = gapOf.get(line);
      if (gap !== undefined) at(bus).gaps.push(gap);
    }
  }
  return found;
};

const silent: BusState = { partOf: new Map(), doubtful: false, unfed: [], feedLost: false, liveGaps: new Set() };

/**
 * What follows from a hit: buses cut, shorted or without power, units without any live feed. A bus that no layout lays is
 * one stretch that nothing cuts. Pure.
 */
export const effectOf = (model: FailureModel, hit: Hit): Effect => {
  const buses = new Map<string, BusState>();
  const hitNodes = [...hit.nodes, ...hit.units.map((kit) => `unit:${kit}`)];
  for (const line of hit.lines) hitNodes.push(...(model.leadsOf.get(line) ?? []));
  for (const [bus, own] of busHits(model, hit)) {
    const trunk = model.trunks.get(bus);
    if (trunk === undefined) continue;
    const state = busState(trunk, own);
    buses.set(bus, state);
    if (state.feedLost) hitNodes.push(`bus:${bus}`);
    hitNodes.push(...state.unfed.map((port) => `drop:${port}`));
  }
  const nodes = model.darkNodes(hitNodes);
  const dark = new Set(hit.units);
  for (const node of nodes) {
    if (node.startsWith('unit:')) dark.add(node.slice('unit:'.length));
    else if (node.startsWith('bus:')) buses.set(node.slice('bus:'.length), silent);
  }
  return { dark, cut: new Set(hit.lines), buses, nodes };
};

/** The lines that carry nothing any more. */
export const stillLines = (model: FailureModel, { dark, cut, buses, nodes }: Effect): string[] => {
  const found = new Set(cut);
  const trunkOf = (bus: string): BusTrunk | undefined => model.trunks.get(bus);
  for (const [bus, state] of buses) {
    for (const [line, gap] of trunkOf(bus)?.gapOf ?? []) if (!state.liveGaps.has(gap)) found.add(line);
    for (const { line, port } of model.dropsOfBus.get(bus) ?? []) if (!state.partOf.has(port)) found.add(line);
  }
  for (const [line, leads] of model.leadsOf)
    if (model.lines.get(line)?.kind === 'feed' && leads.every((node) => nodes.has(node))) found.add(line);
  for (const unit of dark) for (const line of model.linesOfUnit.get(unit) ?? []) found.add(line);
  return [...found].filter((id) => model.lines.has(id));
};
