import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import type { JoinEntry, LineEntry } from '../plan-shape.ts';
import { lineBetween } from './line-between.ts';

/** A boat as she is wired in one phase. */
export interface WiredBoat {
  readonly index: BoatIndex;
  /** units aboard */
  readonly aboard: ReadonlySet<string>;
  readonly joins: readonly JoinEntry[];
  readonly lines: readonly LineEntry[];
}

/**
 * What lives on what: by node, the nodes any one of which keeps it alive; a node with none needs nothing. Nodes are
 * `bank:`, `panel:`, `circuit:`, `converter:`, `lead:` (a cable that brings power), `bus:` (power at its feed tee), `drop:`
 * (power at a port of a bus) and `unit:`.
 */
export type SupplyGraph = ReadonlyMap<string, readonly string[]>;

type Open = Map<string, readonly string[]>;

/** The circuits that name each target, as `panel.circuit`. */
const circuitsNaming = (index: BoatIndex): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const panel of index.boat.supply.panels)
    for (const { id, feeds } of panel.circuits)
      for (const target of feeds) found.set(target, [...(found.get(target) ?? []), `${panel.id}.${id}`]);
  return found;
};

/** The feed cables, by panel and what they end at. */
const feedLines = (lines: readonly LineEntry[]): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  for (const { id, kind, from, to } of lines) {
    if (kind !== 'feed') continue;
    found.set(`${from} ${to}`, id);
    found.set(`${to} ${from}`, id);
  }
  return found;
};

/** The node of a cable that brings power to something; hit when the cable is. */
export const leadNode = (line: string | undefined, target: string): string => `lead:${line ?? ''} ${target}`;

const supplySide = (index: BoatIndex, open: Open, naming: ReturnType<typeof circuitsNaming>): void => {
  const nodeOf = (id: string): string => {
    if (index.banks.has(id)) return `bank:${id}`;
    return index.panels.has(id) ? `panel:${id}` : `converter:${id}`;
  };
  for (const { id } of index.boat.supply.banks) open.set(`bank:${id}`, []);
  for (const { id, from, circuits } of index.boat.supply.panels) {
    const own = (naming.get(id) ?? []).map((circuit) => `circuit:${circuit}`);
    open.set(`panel:${id}`, own.length > 0 ? own : [nodeOf(from)]);
    for (const circuit of circuits) open.set(`circuit:${id}.${circuit.id}`, [`panel:${id}`]);
  }
};

/** Leads from every circuit that names a target, or from a panel that feeds it unasked. */
const fedBy = (
  open: Open,
  {
    target,
    ends,
    circuits,
    feeds,
  }: {
    target: string;
    /** what its end of the cable may be called */
    ends: readonly string[];
    circuits: readonly string[];
    feeds: ReadonlyMap<string, string>;
  },
): string[] =>
  circuits.map((circuit) => {
    const { kit: panel } = splitDotted(circuit);
    const line = ends.map((end) => feeds.get(`${panel} ${end}`)).find((id) => id !== undefined);
    const node = leadNode(line, `${target} ${circuit}`);
    open.set(node, [`circuit:${circuit}`]);
    return node;
  });

const busFeeds = (boat: WiredBoat, open: Open, bus: string, circuits: readonly string[]): string[] => {
  const feeds = feedLines(boat.lines);
  const named = fedBy(open, { target: bus, ends: [bus], circuits, feeds });
  if (named.length > 0) return named;
  // a bus that no circuit names is fed from the panel its lead leads to
  const line = boat.lines.find(({ kind, from, to }) => kind === 'feed' && (from === bus || to === bus));
  if (line === undefined) return [];
  const node = leadNode(line.id, bus);
  open.set(node, [`panel:${line.from === bus ? line.to : line.from}`]);
  return [node];
};

const protocolOf = (sheet: Sheet, port: string): string | undefined =>
  sheet.ports.find(({ id }) => id === port)?.protocol;

/** Which bus each port is on. */
export const busByPort = (joins: readonly JoinEntry[]): ReadonlyMap<string, string> =>
  new Map(
    joins.flatMap(({ bus, members }) =>
      bus === undefined ? [] : members.map(({ kit, port }): [string, string] => [`${kit}.${port}`, bus]),
    ),
  );

/**
 * Units with a dc port live on its circuits: what they also draw from a bus keeps only their interface awake. The others live
 * on the bus, or on the lead to another unit.
 */
const unitFeeds = (boat: WiredBoat, open: Open, naming: ReturnType<typeof circuitsNaming>): void => {
  const feeds = feedLines(boat.lines);
  const busOf = busByPort(boat.joins);
  const onLeads: { kit: string; port: string }[] = [];
  for (const kit of [...boat.aboard].sort(byCodeUnit)) {
    const sheet = boat.index.sheetOf.get(kit);
    open.set(`unit:${kit}`, []);
    if (sheet === undefined || sheet.ownBattery === true) continue;
    const ports = (sheet.power ?? []).map(({ port }) => port);
    const own = ports.filter((port) => protocolOf(sheet, port) === 'dc');
    const circuits = own.flatMap((port) => {
      const target = `${kit}.${port}`;
      const plug = sheet.ports.find(({ id }) => id === port)?.onPlug ?? port;
      const ends = [`${kit}.${plug}`, `${kit}.${plug}#${port}`];
      return fedBy(open, { target, ends, circuits: naming.get(target) ?? [], feeds });
    });
    if (own.length > 0) {
      open.set(`unit:${kit}`, circuits);
      continue;
    }
    const buses = ports.map((port) => `${kit}.${port}`).filter((port) => busOf.has(port));
    open.set(
      `unit:${kit}`,
      buses.map((port) => `drop:${port}`),
    );
    if (buses.length === 0) onLeads.push(...ports.map((port) => ({ kit, port })));
  }
  liveOnLeads(boat, open, onLeads);
};

/** A drive on its computer, a head on the maker's own wire, a camera on a socket: fed by the unit at the other end, which may itself be. */
const liveOnLeads = (boat: WiredBoat, open: Open, waiting: { kit: string; port: string }[]): void => {
  const isFed = (kit: string): boolean => (open.get(`unit:${kit}`) ?? []).length > 0;
  for (let grew = true; grew; ) {
    grew = false;
    for (const { kit, port } of waiting) {
      if (isFed(kit)) continue;
      const found = boat.joins
        .filter(({ bus, members }) => bus === undefined && members.some((own) => own.kit === kit && own.port === port))
        .flatMap((join) =>
          [...join.members]
            .filter((other) => other.kit !== kit && isFed(other.kit))
            .sort((a, b) => Number(b.as === 'talk') - Number(a.as === 'talk') || byCodeUnit(a.kit, b.kit))
            .map((other) => ({ join, other })),
        )[0];
      if (found === undefined) continue;
      const { join, other } = found;
      const line = lineBetween(boat, join, [`${kit}.${port}`, `${other.kit}.${other.port}`]);
      const node = leadNode(line, `${kit}.${port}`);
      open.set(node, [`unit:${other.kit}`]);
      open.set(`unit:${kit}`, [node]);
      grew = true;
    }
  }
};

/** What is alive with nothing hit: from what needs nothing onwards. */
const aliveFrom = (open: Open): ReadonlySet<string> => {
  const alive = new Set<string>();
  for (let grew = true; grew; ) {
    grew = false;
    for (const [node, on] of open) {
      if (alive.has(node) || (on.length > 0 && !on.some((one) => alive.has(one) || !open.has(one)))) continue;
      alive.add(node);
      grew = true;
    }
  }
  return alive;
};

/**
 * Power as it is wired. What the boat file does not say how it is fed, or feeds from itself in a ring, counts as fed from
 * elsewhere: no failure of power takes it.
 */
export const supplyGraph = (boat: WiredBoat): SupplyGraph => {
  const { index, joins, lines } = boat;
  const open: Open = new Map();
  const naming = circuitsNaming(index);
  supplySide(index, open, naming);
  const feeds = feedLines(lines);
  for (const { id } of index.boat.supply.dcdc) {
    open.set(`converter:${id}`, fedBy(open, { target: id, ends: [id], circuits: naming.get(id) ?? [], feeds }));
  }
  for (const { id } of index.boat.buses) open.set(`bus:${id}`, busFeeds(boat, open, id, naming.get(id) ?? []));
  for (const [port, bus] of busByPort(joins)) open.set(`drop:${port}`, [`bus:${bus}`]);
  unitFeeds(boat, open, naming);
  const alive = aliveFrom(open);
  return new Map([...open].map(([node, on]) => [node, alive.has(node) ? on : []]));
};
