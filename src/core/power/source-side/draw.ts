import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Circuit, Dcdc, Panel } from '../../boat/supply.ts';
import type { LoadEntry } from '../../power-shape.ts';
import { circuitsByTarget } from '../circuits-by-target.ts';
import { lowestSupplyV } from '../steady-current.ts';
import { panelV } from './panel-v.ts';

/** What a group of units draws together at the lowest supply, A; `riseA` is the largest rise of one of them to its peak. */
export interface Draw {
  readonly typicalA: number;
  readonly mostA: number;
  readonly riseA: number;
}

const nothing: Draw = { typicalA: 0, mostA: 0, riseA: 0 };

/** Draws added; of the peaks one at a time. */
export const summed = (draws: readonly Draw[]): Draw =>
  draws.reduce(
    (sum, { typicalA, mostA, riseA }) => ({
      typicalA: sum.typicalA + typicalA,
      mostA: sum.mostA + mostA,
      riseA: Math.max(sum.riseA, riseA),
    }),
    nothing,
  );

/** A draw as the plan tells it: the peak stands on what the others draw, and is left out where there is none. */
export const drawEntry = ({ typicalA, mostA, riseA }: Draw): { typicalA: number; mostA: number; peakA?: number } => ({
  typicalA,
  mostA,
  ...(riseA > 0 ? { peakA: mostA + riseA } : {}),
});

const drawOfLoad = ({ typicalA, mostA, peakA = 0 }: LoadEntry): Draw => ({
  typicalA,
  mostA,
  riseA: Math.max(0, peakA - mostA),
});

/** A unit of constant power draws less behind a converter than its load says, which is for the lowest volts: the converter holds its own. */
const heldShare = ({ behaves, nominalV }: LoadEntry, converter: Dcdc | undefined): number =>
  converter === undefined || behaves === 'current' ? 1 : lowestSupplyV(nominalV) / converter.outV;

const scaled = ({ typicalA, mostA, riseA }: Draw, by: number): Draw => ({
  typicalA: typicalA * by,
  mostA: mostA * by,
  riseA: riseA * by,
});

/**
 * What every circuit, panel and converter of a boat must give in the last phase. A panel behind a circuit counts with all
 * that hangs on it; a converter as what it gives, V_out I_out / (efficiency V_low); one that charges a bank as its rating.
 * What lives on a network cable is in the draw of its switch. A ring counts once and never runs for ever.
 */
export class Draws {
  readonly #index: BoatIndex;
  readonly #loads: readonly LoadEntry[];
  readonly #circuits: ReturnType<typeof circuitsByTarget>;
  readonly #known = new Map<string, Draw>();
  readonly #open = new Set<string>();

  constructor(index: BoatIndex, loads: readonly LoadEntry[]) {
    this.#index = index;
    this.#loads = loads.filter(({ source }) => source.by !== 'network');
    this.#circuits = circuitsByTarget(index);
  }

  /** One circuit: units, buses, panels and converters that it feeds. A thing that two circuits feed counts at the first. */
  circuit(panel: Panel, circuit: Circuit): Draw {
    const mine = circuit.feeds.filter((target) => {
      const first = this.#circuits.get(target);
      return first?.panel === panel.id && first.circuit === circuit.id;
    });
    return summed(mine.flatMap((target) => this.#target(target, panel)));
  }

  /** One panel: its circuits, and panels that hang on its bars without one. */
  panel(panel: Panel): Draw {
    return this.#once(`panel ${panel.id}`, () =>
      summed([
        ...panel.circuits.map((circuit) => this.circuit(panel, circuit)),
        ...this.#hangingOn(panel.id)
          .filter(({ id }) => this.#circuits.get(id)?.panel !== panel.id)
          .map((below) => this.panel(below)),
      ]),
    );
  }

  /** What hangs on a bank or a converter straight. */
  source(id: string): Draw {
    return this.#once(`source ${id}`, () => summed(this.#hangingOn(id).map((panel) => this.panel(panel))));
  }

  /** What a converter takes on its input side. */
  taken(converter: Dcdc, panel: Panel): Draw {
    const { id, outV, ratedA, efficiencyPct } = converter;
    const out = this.#hangingOn(id).length === 0 ? { typicalA: ratedA, mostA: ratedA, riseA: 0 } : this.source(id);
    return scaled(out, (outV * 100) / (efficiencyPct * lowestSupplyV(panelV(this.#index, panel))));
  }

  #target(target: string, panel: Panel): Draw[] {
    const below = this.#index.panels.get(target);
    // a panel that hangs elsewhere and is fed from here too is told of by a finding, and counts where it hangs
    if (below !== undefined) return below.from === panel.id ? [this.panel(below)] : [];
    const converter = this.#converter(target);
    if (converter !== undefined) return [this.taken(converter, panel)];
    return this.#loads
      .filter((load) => this.#isFedAs(load, target))
      .map((load) => scaled(drawOfLoad(load), heldShare(load, this.#converter(load.from))));
  }

  #converter(id: string | undefined): Dcdc | undefined {
    return this.#index.boat.supply.dcdc.find((entry) => entry.id === id);
  }

  #isFedAs({ port, source }: LoadEntry, target: string): boolean {
    if (source.by === 'bus') return source.bus === target;
    return source.by === 'unit' ? source.port === target : port === target;
  }

  #hangingOn(id: string): readonly Panel[] {
    return [...this.#index.panels.values()].filter(({ from }) => from === id);
  }

  #once(key: string, count: () => Draw): Draw {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    if (this.#open.has(key)) return nothing;
    this.#open.add(key);
    const draw = count();
    this.#open.delete(key);
    this.#known.set(key, draw);
    return draw;
  }
}
