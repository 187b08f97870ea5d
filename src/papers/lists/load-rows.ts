import type { Boat } from '../../core/boat/boat-schema.ts';
import { lastPhase } from '../../core/boat/phase.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { LoadEntry, LoadSum, OldLoad } from '../../core/power-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { voltsAtLoad } from '../power/volts-at-load.ts';
import { endWords } from './end-words.ts';
import { printAmps, printVolts } from './print-power.ts';

/** What one port of a unit drew before the refit and draws after it, in words. */
export interface LoadRow {
  readonly key: string;
  readonly what: string;
  /** in one line of a list */
  readonly fact: string;
  readonly before: Pick<OldLoad, 'typicalA' | 'mostA' | 'peakA'> | undefined;
  readonly after: LoadEntry | undefined;
  readonly fedBy: string;
  /** with everything drawing and the bank at its lowest */
  readonly lowest: string;
  readonly lowestV: number | undefined;
  readonly needs: string;
  /** fewer volts arrive than it needs */
  readonly isShort: boolean;
  readonly lights: readonly string[];
}

/** What a bank or converter gives with everything on it drawing, before the refit and in each phase. */
export interface LoadSumRow {
  readonly key: string;
  readonly source: string;
  readonly phase: string;
  readonly typical: string;
  readonly most: string;
}

const unitOf = (port: string): string => port.split('.')[0] ?? port;

const nameOf = (index: CardBoat, port: string, all: readonly string[]): string => {
  const unit = unitOf(port);
  const isOne = all.filter((other) => unitOf(other) === unit).length === 1;
  return endWords(index, isOne ? unit : port);
};

const fedByWords = (index: CardBoat, { source }: LoadEntry): string => {
  switch (source.by) {
    case 'circuit':
      return `${endWords(index, source.panel)}, ${source.circuit}`;
    case 'bus':
      return endWords(index, source.bus);
    case 'network':
      return source.port === undefined
        ? 'its network cable'
        : `its network cable, from ${endWords(index, unitOf(source.port))}`;
    case 'unit':
      return endWords(index, unitOf(source.port));
    case 'nothing':
      return 'nothing yet';
  }
};

const drawWords = ({ typicalA, mostA, peakA }: Pick<OldLoad, 'typicalA' | 'mostA' | 'peakA'>): string =>
  [
    typicalA === mostA ? printAmps(mostA) : `${printAmps(typicalA)} typical, ${printAmps(mostA)} at most`,
    ...(peakA === undefined ? [] : [`${printAmps(peakA)} for moments`]),
  ].join(', ');

const rowOf = (index: CardBoat, plan: Plan, port: string, all: readonly string[]): LoadRow => {
  const before = plan.loadsBefore.find((load) => load.port === port);
  const after = plan.loads.find((load) => load.port === port);
  const lowestV = after === undefined ? undefined : voltsAtLoad(plan, after);
  const lowest = lowestV === undefined ? '' : printVolts(lowestV);
  const fedBy = after === undefined ? '' : fedByWords(index, after);
  const now = after === undefined ? [] : [drawWords(after), `from ${fedBy}`, ...(lowest === '' ? [] : [lowest])];
  const isSame = before?.mostA === after?.mostA && before?.typicalA === after?.typicalA;
  const old = before === undefined || isSame ? [] : [`before ${drawWords(before)}`];
  return {
    key: port,
    what: nameOf(index, port, all),
    fact: [...now, ...old, ...(after === undefined ? ['goes ashore'] : [])].join('; '),
    before,
    after,
    fedBy,
    lowest,
    lowestV,
    needs: after === undefined ? '' : `${Number(after.minV.toFixed(2))} V`,
    isShort: after !== undefined && lowestV !== undefined && lowestV < after.minV,
    lights: [unitOf(port)],
  };
};

/** Every unit that draws, before the refit and after it, in the order of the kit of the boat file. */
export const loadRows = (index: CardBoat, plan: Plan): LoadRow[] => {
  const ports = [...new Set([...plan.loads, ...plan.loadsBefore].map(({ port }) => port))];
  const order = new Map(index.boat.kit.map(({ id }, at) => [id, at]));
  return ports
    .sort((one, other) => (order.get(unitOf(one)) ?? 0) - (order.get(unitOf(other)) ?? 0))
    .map((port) => rowOf(index, plan, port, ports));
};

const phaseWords = (boat: Boat, phase: number): string => {
  if (phase === 0) return 'before';
  return lastPhase(boat) === 1 ? 'after' : `after phase ${phase}`;
};

const sourceWords = (index: CardBoat, from: string): string =>
  index.banks.has(from) ? endWords(index, from) : `converter ${from}`;

/** What each bank and converter gives when everything on it draws, source by source, phase by phase. */
export const loadSumRows = (index: CardBoat, plan: Pick<Plan, 'loadSums'>): LoadSumRow[] => {
  const sources = [...new Set(plan.loadSums.map(({ from }) => from))];
  const rowOfSum = ({ from, phase, typicalA, mostA }: LoadSum): LoadSumRow => ({
    key: `${from} ${phase}`,
    source: sourceWords(index, from),
    phase: phaseWords(index.boat, phase),
    typical: printAmps(typicalA),
    most: printAmps(mostA),
  });
  return sources.flatMap((source) => plan.loadSums.filter(({ from }) => from === source).map(rowOfSum));
};
