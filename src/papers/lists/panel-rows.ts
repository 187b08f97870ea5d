import type { CircuitEntry, PanelEntry } from '../../core/panels-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { circuitKinds } from './circuit-kinds.ts';
import { endWords } from './end-words.ts';
import { panelFacts } from './panel-words.ts';
import { printAmps } from './print-power.ts';

/** One circuit of a panel as the fuse and breaker table shows it. */
export interface CircuitRow {
  /** `panel.circuit` */
  readonly key: string;
  readonly circuit: string;
  /** the name it has aboard; absent where it has none */
  readonly name?: string;
  readonly feeds: readonly string[];
  readonly rating: string;
  readonly kind: string;
  readonly load: string;
  /** draws more for long than its rating */
  readonly isOver: boolean;
  readonly isFree: boolean;
  /** in one line of a list */
  readonly fact: string;
  readonly lights: readonly string[];
  readonly entry: CircuitEntry;
}

/** One panel with its circuits as the table shows it. */
export interface PanelRow {
  readonly key: string;
  readonly what: string;
  /** where it hangs, what guards it, what it gives, its feeder and what is left on it, a sentence each */
  readonly facts: readonly string[];
  readonly circuits: readonly CircuitRow[];
  /** places without a breaker or fuse; absent where nobody has counted them */
  readonly freeWays?: number;
  /** circuits short in the worst phase */
  readonly short: number;
  /** something of it is to be looked at */
  readonly isOpen: boolean;
  readonly lights: readonly string[];
  readonly entry: PanelEntry;
}

const unitOf = (target: string): string => target.split('.')[0] ?? target;

/** What a circuit draws: typical, at most, for moments; nothing where nothing of it is known. */
const loadWords = ({ typicalA, mostA, peakA }: Pick<CircuitEntry, 'typicalA' | 'mostA' | 'peakA'>): string => {
  if (mostA === 0) return '';
  const steady = typicalA === mostA ? printAmps(mostA) : `${printAmps(typicalA)} typical, ${printAmps(mostA)} at most`;
  return peakA === undefined ? steady : `${steady}, ${printAmps(peakA)} for moments`;
};

const nameOf = (index: CardBoat, plan: Plan, target: string): string =>
  plan.converters.some(({ converter }) => converter === target)
    ? `converter ${target}`
    : endWords(index, index.buses.has(target) || index.panels.has(target) ? target : unitOf(target));

const circuitRow = (index: CardBoat, plan: Plan, panel: string, entry: CircuitEntry): CircuitRow => {
  const { circuit, name, feeds, ratingA, kind, mostA, free } = entry;
  const fed = [...new Set(feeds.map((target) => nameOf(index, plan, target)))];
  const load = loadWords(entry);
  const rating = printAmps(ratingA);
  const isOver = mostA > ratingA * (1 + 1e-9);
  const serves = fed.length > 0 ? fed.join(', ') : (name ?? 'nothing');
  return {
    key: `${panel}.${circuit}`,
    circuit,
    ...(name === undefined ? {} : { name }),
    feeds: fed,
    rating,
    kind: circuitKinds[kind],
    load,
    isOver,
    isFree: free,
    fact: [
      `${rating} ${circuitKinds[kind]}`,
      free ? 'free' : serves,
      ...(load === '' ? [] : [`draws ${load}${isOver ? ', more than it lets through' : ''}`]),
    ].join('; '),
    lights: [circuit, ...feeds.map(unitOf)],
    entry,
  };
};

const shortOf = ({ room }: PanelEntry): number => Math.max(0, ...room.map(({ short }) => short ?? 0));

/** Whether a panel has something that a person has to look at: too little room, or a circuit or feeder over its limit. */
const isOpenPanel = (entry: PanelEntry, circuits: readonly CircuitRow[]): boolean =>
  shortOf(entry) > 0 ||
  circuits.some(({ isOver }) => isOver) ||
  entry.main.breaks === 'no' ||
  (entry.guardA !== undefined && entry.guardA > (entry.feeder?.ampacityA ?? Number.POSITIVE_INFINITY));

/** Every panel with its circuits, in the order of the boat file: the fuse and breaker table. */
export const panelRows = (index: CardBoat, plan: Plan): PanelRow[] =>
  index.boat.supply.panels.flatMap(({ id, place }) => {
    const entry = plan.panels.find(({ panel }) => panel === id);
    if (entry === undefined) return [];
    const circuits = entry.circuits.map((circuit) => circuitRow(index, plan, id, circuit));
    return [
      {
        key: id,
        what: endWords(index, id),
        facts: panelFacts(index, entry),
        circuits,
        ...(entry.freeWays === undefined ? {} : { freeWays: entry.freeWays }),
        short: shortOf(entry),
        isOpen: isOpenPanel(entry, circuits),
        lights: [id, place],
        entry,
      },
    ];
  });
