import { layoutProblems } from '../../src/core/backbone/layout-problems.ts';
import type { Problem } from '../../src/core/backbone/problem.ts';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { lengthMm } from '../../src/core/boat/measure.ts';
import type { DcLoad } from '../../src/core/network/dc-solve.ts';
import type { DcEdge } from '../../src/core/network/dc-tree.ts';
import type { BusEntry, FeedEntry, Plan } from '../../src/core/plan-shape.ts';
import { lowestSupplyV } from '../../src/core/power/steady-current.ts';
import type { Circuit, Converter, Stage } from './circuit.ts';

/** Copper, ohm mm² per metre; IEC 60028. */
const copper = 0.017241;
/** Amperes a load number stands for. */
const lenA = 0.05;

interface Parts {
  readonly edges: readonly DcEdge[];
  readonly loads: readonly DcLoad[];
}

/** Out and back in one feed as the plan prints it: its drop at its current, or what it may lose where its copper is unknown. */
const feedOhm = ({ realDropV, allowedV, loadA }: FeedEntry): number => {
  return loadA > 0 ? (realDropV ?? allowedV) / loadA : 0;
};

/** A bus as the plan prints it, at its longest, from the feed’s tee on. */
const busParts = (bus: BusEntry, problem: Problem, panel: string, leadOhm: number): Parts => {
  const ohmPerM = (problem.grades.find(({ id }) => id === bus.grade)?.microOhmPerM ?? Number.NaN) / 1e6;
  const tee = (step: number): string => (step === feedStep ? bus.id : `${bus.id} tee ${step}`);
  const feedStep = bus.walk.findIndex(({ tees }) => tees.includes('feed'));
  const teeOf = new Map(
    bus.walk.toReversed().flatMap(({ tees }, n) => tees.map((one) => [one, bus.walk.length - 1 - n])),
  );
  const boughtM = new Map(bus.drops.map(({ port, boughtM: metres }) => [port, metres]));
  const hung = problem.devices.filter(({ id }) => teeOf.has(id));
  return {
    edges: [
      { id: `${bus.id} lead`, from: panel, to: bus.id, loopOhm: leadOhm },
      ...bus.walk.flatMap(({ via }, step) => {
        const mm = problem.ways.find(({ id }) => id === via)?.maxMm;
        if (mm === undefined) return [];
        const loopOhm = (2 * ohmPerM * mm) / 1000;
        return [{ id: `${bus.id} trunk ${step}`, from: tee(step - 1), to: tee(step), loopOhm }];
      }),
      ...hung.map(({ id }) => {
        const loopOhm = 2 * ohmPerM * (boughtM.get(id) ?? 0);
        return { id: `${bus.id} drop ${id}`, from: tee(teeOf.get(id) ?? 0), to: id, loopOhm };
      }),
    ],
    loads: hung.map(({ id, len }) => ({ node: id, behaves: 'current', amps: len * lenA })),
  };
};

const loadOf = ({ port, behaves, mostA, nominalV }: Plan['loads'][number]): DcLoad =>
  behaves === 'power'
    ? { node: port, behaves, watts: mostA * lowestSupplyV(nominalV) }
    : { node: port, behaves, amps: mostA };

/** Puts the circuit of a boat together from her file and what her plan prints, by none of the code that solves her. */
class BoatCircuit {
  readonly #boat: Boat;
  readonly #plan: Plan;
  readonly #problems: readonly Problem[];

  constructor(boat: Boat, plan: Plan) {
    this.#boat = boat;
    this.#plan = plan;
    this.#problems = layoutProblems(boat);
  }

  stage(source: string): Stage {
    const { banks, panels } = this.#boat.supply;
    const insideOhm = (banks.find(({ id }) => id === source)?.internalMilliOhm ?? 0) / 1000;
    const behind = panels.filter((panel) => this.#sourceOf(panel.id) === source);
    const own = this.#plan.feeds.filter(({ panel }) => behind.some(({ id }) => id === panel));
    const parts = own.map((feed) => this.#feed(feed));
    return {
      net: {
        source: `inside ${source}`,
        sourceV: this.#plan.supplies.find((supply) => supply.source === source)?.sourceV ?? Number.NaN,
        edges: [
          { id: `inside ${source}`, from: `inside ${source}`, to: source, loopOhm: insideOhm },
          ...behind.map(({ id, from }) => ({ id: `feeder ${id}`, from, to: id, loopOhm: this.#feederOhm(id) })),
          ...parts.flatMap(({ edges }) => edges),
        ],
        loads: parts.flatMap(({ loads }) => loads),
      },
      converters: own.flatMap(({ to }) => this.#converter(to)),
    };
  }

  #sourceOf(panel: string): string {
    const above = this.#boat.supply.panels.find(({ id }) => id === panel);
    return above === undefined ? panel : this.#sourceOf(above.from);
  }

  #feederOhm(panel: string): number {
    const { feeder, mainA } = this.#boat.supply.panels.find(({ id }) => id === panel) ?? {};
    if (feeder?.areaMm2 !== undefined) {
      return (2 * copper * lengthMm(feeder.length).longestMm) / 1000 / feeder.areaMm2;
    }
    const source = this.#sourceOf(panel);
    const { banks, dcdc } = this.#boat.supply;
    const nominalV =
      banks.find(({ id }) => id === source)?.nominalV ?? dcdc.find(({ id }) => id === source)?.outV ?? Number.NaN;
    const drawn = this.#plan.loads.filter(({ source: by }) => by.by === 'circuit' && by.panel === panel);
    const amps = mainA ?? drawn.reduce((sum, { mostA }) => sum + mostA, 0);
    return amps > 0 ? (0.03 * nominalV) / amps : 0;
  }

  #feed(feed: FeedEntry): Parts {
    const bus = this.#plan.buses.find(({ id }) => id === feed.to);
    const problem = this.#problems.find(({ bus: id }) => id === feed.to);
    if (bus !== undefined && problem !== undefined) return busParts(bus, problem, feed.panel, feedOhm(feed));
    const ports = this.#portsOf(feed);
    const leads = (feed.leads ?? []).flatMap(({ line, to, runA, realDropV }): DcEdge[] =>
      realDropV === undefined || runA === 0 ? [] : [{ id: line, from: feed.line, to, loopOhm: realDropV / runA }],
    );
    const loads = this.#plan.loads.flatMap((load): DcLoad[] => {
      const { source, port } = load;
      const isServed =
        source.by === 'circuit' ? ports.includes(port) : source.by === 'unit' && ports.includes(source.port);
      if (!isServed) return [];
      const hasOwnEnd = source.by !== 'unit' || leads.some(({ to }) => to === port);
      return [{ ...loadOf(load), node: hasOwnEnd ? port : source.port }];
    });
    return {
      edges: [
        { id: feed.line, from: feed.panel, to: feed.line, loopOhm: feedOhm(feed) },
        ...ports.map((port) => ({ id: `${feed.line} ${port}`, from: feed.line, to: port, loopOhm: 0 })),
        ...leads,
      ],
      loads: [...loads, ...this.#charger(feed.to)],
    };
  }

  /** What one feed serves: the converter, or the ports of the plug at its end that its panel feeds. */
  #portsOf({ line, to, panel }: FeedEntry): readonly string[] {
    if (!to.includes('.')) return [to];
    const { from, to: other } = this.#plan.lines.find(({ id }) => id === line) ?? { from: '', to: '' };
    const end = from === panel ? other : from;
    const onPanel = this.#plan.loads.filter(({ source }) => source.by === 'circuit' && source.panel === panel);
    const drawing = onPanel.map(({ port }) => port).filter((port) => this.#endsOf(port).includes(end));
    return [...new Set([to, ...drawing])];
  }

  /** How a line may call the end at which a port is: its plug, or its plug with the port where they have feeds of their own. */
  #endsOf(port: string): readonly string[] {
    const [kit = '', own = ''] = port.split('.');
    const sheet = this.#boat.kit.find(({ id }) => id === kit)?.sheet;
    const plug = this.#boat.sheets.find(({ id }) => id === sheet)?.ports.find(({ id }) => id === own)?.onPlug;
    return [`${kit}.${plug}`, `${kit}.${plug}#${own}`];
  }

  /** A converter with nothing on it charges a bank: all it may give, by its efficiency. */
  #charger(to: string): readonly DcLoad[] {
    const converter = this.#boat.supply.dcdc.find(({ id }) => id === to);
    if (converter === undefined || this.#isSource(to)) return [];
    const { outV, ratedA, efficiencyPct } = converter;
    return [{ node: to, behaves: 'power', watts: (outV * ratedA) / (efficiencyPct / 100) }];
  }

  #converter(to: string): readonly Converter[] {
    const converter = this.#boat.supply.dcdc.find(({ id }) => id === to);
    if (converter === undefined || !this.#isSource(to)) return [];
    return [{ node: to, feeds: `inside ${to}`, efficiency: converter.efficiencyPct / 100 }];
  }

  #isSource(converter: string): boolean {
    return this.#plan.supplies.some(({ source }) => source === converter);
  }
}

/** The direct current of a boat, put together a second time: a stage for each supply of her plan, in the plan’s order. */
export const boatCircuit = (boat: Boat, plan: Plan): Circuit => {
  const circuit = new BoatCircuit(boat, plan);
  return plan.supplies.map(({ source }) => circuit.stage(source));
};
