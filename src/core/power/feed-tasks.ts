import { panelNominalV } from '../backbone/panel-volts.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { Circuit, Panel } from '../boat/supply.ts';
import { ampsOfLen } from '../network/len-of.ts';
import type { BusEntry, LineEntry } from '../plan-shape.ts';
import { type Circuits, circuitsByTarget } from './circuits-by-target.ts';
import { type DriveLead, driveLeads } from './drive-leads.ts';
import { circuitsServing, type FeedEnds, feedEnds, servedBy } from './feed-ends.ts';
import { lowestSupplyV } from './steady-current.ts';
import type { UnitLoad } from './unit-loads.ts';

/** One feed as a question: what it serves, what that draws, and what protects it. */
export interface FeedTask {
  readonly line: LineEntry;
  readonly panel: Panel;
  readonly circuit: Circuit;
  /** ports, bus or converter at its far end */
  readonly served: readonly string[];
  readonly kind: 'unit' | 'bus' | 'converter';
  readonly nominalV: number;
  readonly typicalA: number;
  readonly steadyA: number;
  readonly peakA?: number;
  /** the least fuse a maker of the units states */
  readonly statedA?: number;
  /** volts the neediest unit must have */
  readonly leastV?: number;
  /** whether the circuit feeds this line and nothing else */
  readonly alone: boolean;
  /** leads to drives behind it, longest first: they lose from the same share */
  readonly leads: readonly DriveLead[];
}

type Draw = Pick<FeedTask, 'kind' | 'typicalA' | 'steadyA' | 'peakA' | 'statedA' | 'leastV'>;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const least = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : Math.min(...values);

/** What a group of loads draws on one cable; of the peaks one at a time, upon what the others draw. */
const unitDraw = (loads: readonly UnitLoad[]): Draw => {
  const steadyA = sum(loads.map(({ mostA }) => mostA));
  const rises = loads.map(({ mostA, peakA = 0 }) => peakA - mostA);
  const riseA = Math.max(0, ...rises);
  const statedA = least(loads.flatMap(({ fuseA }) => fuseA ?? []));
  const leastV = loads.length === 0 ? undefined : Math.max(...loads.map(({ minV }) => minV));
  return {
    kind: 'unit',
    typicalA: sum(loads.map(({ typicalA }) => typicalA)),
    steadyA,
    ...(riseA > 0 ? { peakA: steadyA + riseA } : {}),
    ...(statedA === undefined ? {} : { statedA }),
    ...(leastV === undefined ? {} : { leastV }),
  };
};

/** A converter draws what it may give, divided by its efficiency, at the lowest volts: I = V_out I_out / (eta V_low). */
const converterDraw = (index: BoatIndex, id: string, nominalV: number): Draw => {
  const entry = index.boat.supply.dcdc.find((converter) => converter.id === id);
  const watts = entry === undefined ? 0 : (entry.outV * entry.ratedA * 100) / entry.efficiencyPct;
  const amps = watts / lowestSupplyV(nominalV);
  return { kind: 'converter', typicalA: amps, steadyA: amps };
};

/** What the line's far end has that this panel feeds; fed from two panels it counts at the first, and a finding tells of it. */
const targetsOf = (index: BoatIndex, circuits: Circuits, { panel, fed }: FeedEnds): readonly string[] =>
  servedBy(index, fed).filter((target) => circuits.get(target)?.panel === panel);

/** The feeds of a boat as questions, in the order of the lines; a bus's feed without a circuit has none yet. */
export const feedTasks = ({
  index,
  lines,
  loads,
  buses,
}: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly loads: readonly UnitLoad[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'len'>[];
}): FeedTask[] => {
  const circuits = circuitsByTarget(index);
  return lines.flatMap((line) => {
    if (line.kind !== 'feed') return [];
    const ends = feedEnds(index, line);
    const panel = index.panels.get(ends.panel);
    if (panel === undefined) return [];
    const served = targetsOf(index, circuits, ends);
    const [circuit] = circuitsServing(index, panel.id, served);
    if (circuit === undefined) return [];
    const nominalV = panelNominalV(index, panel);
    const bus = buses.find(({ id }) => id === ends.fed);
    const draw = (): Draw => {
      if (bus !== undefined) return { kind: 'bus', typicalA: ampsOfLen(bus.len), steadyA: ampsOfLen(bus.len) };
      if (!ends.fed.includes('.')) return converterDraw(index, ends.fed, nominalV);
      const drawn = ({ port, source }: UnitLoad): boolean =>
        (source.by === 'circuit' && served.includes(port)) || (source.by === 'unit' && served.includes(source.port));
      return unitDraw(loads.filter(drawn));
    };
    const alone = circuit.feeds.every((target) => served.includes(target) || !isAboardTarget(loads, buses, target));
    const leads = driveLeads(index, { lines, loads, served });
    return [{ line, panel, circuit, served, nominalV, ...draw(), alone, leads }];
  });
};

/** Units that leave do not share a circuit with those that come. */
const isAboardTarget = (loads: readonly UnitLoad[], buses: readonly Pick<BusEntry, 'id'>[], target: string): boolean =>
  !target.includes('.') || loads.some(({ port }) => port === target) || buses.some(({ id }) => id === target);
