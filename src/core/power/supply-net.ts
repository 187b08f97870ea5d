import { fedBus } from '../backbone/bus-figures.ts';
import { busNet, busSupply } from '../backbone/bus-volts.ts';
import { lowestSourceV } from '../backbone/panel-volts.ts';
import { panelsUp } from '../backbone/panels-up.ts';
import type { Layout, Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Dcdc, Panel } from '../boat/supply.ts';
import { type DcAnswer, type DcLoad, type DcNet, solveDc } from '../network/dc-solve.ts';
import type { DcEdge } from '../network/dc-tree.ts';
import { feederOhm } from './feeder-ohm.ts';
import type { UnitLoad } from './unit-loads.ts';

/** One feed: the cable from a panel to a bus, a converter or ports of a unit. `loopOhm` out and back. */
export interface FeedCable {
  readonly line: string;
  readonly panel: string;
  readonly fed: readonly string[];
  readonly loopOhm: number;
  /** leads from a port it feeds to a drive behind it */
  readonly leads?: readonly { readonly line: string; readonly to: string; readonly loopOhm: number }[];
}

/** What the direct current of a boat is solved from. */
export interface SupplyInput {
  readonly index: BoatIndex;
  readonly loads: readonly UnitLoad[];
  readonly feeds: readonly FeedCable[];
  readonly buses: readonly BusBehind[];
}

/** The net behind one bank or converter, and its answer. */
export interface SolvedSupply {
  readonly source: string;
  readonly net: DcNet;
  readonly answer: DcAnswer;
}

type NetParts = Pick<DcNet, 'edges' | 'loads'>;

/** The node of the volts inside a bank, before its own resistance. */
const insideOf = (bank: string): string => `inside ${bank}`;

/** A bus from the tee of its feed on, that tee being the node named as the bus. */
export interface BusBehind extends NetParts {
  readonly bus: string;
  readonly isFed: boolean;
}

/** A bus as the supply sees it; a unit on it keeps the name of its port, so that volts are found by it. Empty where no layout feeds it. */
export const busBehind = ({ problem, layout }: { readonly problem: Problem; readonly layout: Layout }): BusBehind => {
  const fed = fedBus(problem, layout);
  if (fed === undefined) return { bus: problem.bus, isFed: false, edges: [], loads: [] };
  const { edges, loads } = busNet(fed);
  // the wire of the feed may be another than the layout reckoned with
  const lead = edges.find(({ from }) => from === busSupply);
  const ports = new Set(problem.devices.map(({ id }) => id));
  const named = (node: string): string => {
    if (node === lead?.to) return problem.bus;
    return ports.has(node) ? node : `${problem.bus} ${node}`;
  };
  const own = edges.filter((edge) => edge !== lead);
  // A device at two places of one bus cannot be: every port is a node of its own.
  return {
    bus: problem.bus,
    isFed: true,
    edges: own.map(({ id, from, to, loopOhm }) => ({
      id: `${problem.bus} ${id}`,
      from: named(from),
      to: named(to),
      loopOhm,
    })),
    loads: loads.map((load) => ({ ...load, node: named(load.node) })),
  };
};

const loadAt = (node: string, { behaves, most }: Pick<UnitLoad, 'behaves' | 'most'>): DcLoad =>
  behaves === 'power' ? { node, behaves, watts: most } : { node, behaves, amps: most };

/** Solves sources one by one, a converter before what feeds it. */
class Supplies {
  readonly #input: SupplyInput;
  readonly #solved = new Map<string, SolvedSupply>();
  readonly #open = new Set<string>();

  constructor(input: SupplyInput) {
    this.#input = input;
  }

  /** The net of a source, solved; absent for a converter that in the end feeds itself, which then counts as drawing its rating. */
  solve(source: string): SolvedSupply | undefined {
    const known = this.#solved.get(source);
    if (known !== undefined || this.#open.has(source)) return known;
    this.#open.add(source);
    const net = this.#netOf(source);
    const solved = { source, net, answer: solveDc(net) };
    this.#open.delete(source);
    this.#solved.set(source, solved);
    return solved;
  }

  #panelsOf(source: string): readonly Panel[] {
    const { index } = this.#input;
    return [...index.panels.values()].filter((panel) => panelsUp(index, panel).source === source);
  }

  #netOf(source: string): DcNet {
    const { index, feeds } = this.#input;
    const panels = this.#panelsOf(source);
    const own = new Set(panels.map(({ id }) => id));
    const parts = feeds.filter(({ panel }) => own.has(panel)).map((feed) => this.#feedParts(feed, source));
    const inside = index.banks.get(source)?.internalMilliOhm;
    const bankEdge = { id: `inside ${source}`, from: insideOf(source), to: source, loopOhm: (inside ?? 0) / 1000 };
    return {
      source: inside === undefined ? source : insideOf(source),
      sourceV: lowestSourceV(index, source),
      edges: [
        ...(inside === undefined ? [] : [bankEdge]),
        ...panels.map((panel) => this.#feeder(panel)),
        ...parts.flatMap(({ edges }) => edges),
      ],
      loads: parts.flatMap(({ loads }) => loads),
    };
  }

  #feeder(panel: Panel): DcEdge {
    const drawnA = this.#input.loads.reduce(
      (sumA, { source, mostA }) => (source.by === 'circuit' && source.panel === panel.id ? sumA + mostA : sumA),
      0,
    );
    const loopOhm = feederOhm(this.#input.index, panel, drawnA);
    return { id: `feeder ${panel.id}`, from: panel.from, to: panel.id, loopOhm };
  }

  #feedParts(feed: FeedCable, source: string): NetParts {
    const { line, panel, fed, loopOhm, leads = [] } = feed;
    const behind = this.#input.buses.find(({ bus }) => bus === fed[0]);
    if (behind !== undefined) {
      const { bus, isFed, edges, loads } = behind;
      return isFed ? { edges: [{ id: line, from: panel, to: bus, loopOhm }, ...edges], loads } : behind;
    }
    // a converter that feeds itself has its output at its own name, so its input needs another, or the tree were a ring
    const nodeOf = (port: string): string => (port === source ? `input of ${port}` : port);
    const ends = fed.map((port) => ({ id: `${line} ${port}`, from: line, to: nodeOf(port), loopOhm: 0 }));
    const drives = leads.map((lead) => ({ id: lead.line, from: line, to: lead.to, loopOhm: lead.loopOhm }));
    const atDrive = new Set(leads.map(({ to }) => to));
    return {
      edges: [{ id: line, from: panel, to: line, loopOhm }, ...ends, ...drives],
      loads: fed.flatMap((port) => this.#drawnAt(port, atDrive).map((load) => ({ ...load, node: nodeOf(load.node) }))),
    };
  }

  /** What is drawn at a port: by its unit, by what that unit feeds, or by what hangs on the converter of that name; a drive draws at the end of its lead. */
  #drawnAt(port: string, atDrive: ReadonlySet<string>): DcLoad[] {
    const { index, loads } = this.#input;
    const converter = index.boat.supply.dcdc.find(({ id }) => id === port);
    if (converter !== undefined) return [{ node: port, behaves: 'power', watts: this.#takenBy(converter) }];
    const fed = loads.filter(
      ({ source, ...own }) => own.port === port || (source.by === 'unit' && source.port === port),
    );
    return fed.map((load) => loadAt(atDrive.has(load.port) ? load.port : port, load));
  }

  /** P = V_out I_out / efficiency; one that nothing hangs on charges a bank, and may give all it is rated for. */
  #takenBy({ id, outV, ratedA, efficiencyPct }: Dcdc): number {
    const answer = this.#panelsOf(id).length === 0 ? undefined : this.solve(id)?.answer;
    const outA = answer?.solved === true ? answer.sourceA : ratedA;
    return (outV * outA * 100) / efficiencyPct;
  }
}

/**
 * The whole boat’s direct current: for each bank and converter the tree of feeders, feeds and backbone ladders behind it,
 * with everything drawing its most at once and the bank at its lowest. A converter holds its own volts and draws what it
 * gives, divided by its efficiency, as constant power. What lives on a network cable is in the draw of its switch. Pure;
 * sorted by source.
 */
export const supplyNets = (input: SupplyInput): SolvedSupply[] => {
  const supplies = new Supplies(input);
  const { banks, dcdc } = input.index.boat.supply;
  return [...banks, ...dcdc]
    .map(({ id }) => id)
    .sort(byCodeUnit)
    .flatMap((source) => supplies.solve(source) ?? [])
    .filter(({ net }) => net.edges.length > 0);
};
