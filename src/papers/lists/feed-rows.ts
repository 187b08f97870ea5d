import type { FeedEntry, LineEntry, Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { lineLength } from '../cards/line-words.ts';
import { circuitKinds } from './circuit-kinds.ts';
import { endWords } from './end-words.ts';
import { feedIsOpen } from './feed-is-open.ts';
import { feedWords } from './feed-words.ts';
import { printAmps, printLost, printVolts, printWire } from './print-power.ts';
import { endsOfFeed, type UnfedRow, unfedRows } from './unfed-rows.ts';

/** One feed in words: as a line of a list (`what`, `fact`), and cell by cell for a table. */
export interface FedRow extends UnfedRow {
  /** the feed as the plan has it; absent until it is sized, or where no circuit names it */
  readonly feed?: FeedEntry;
  readonly panel: string;
  readonly circuit: string;
  readonly draws: string;
  /** at its longest: what wire and drop are reckoned with */
  readonly length: string;
  readonly wire: string;
  /** by the published rule, and in the cable itself */
  readonly drop: string;
  readonly realDrop: string;
  readonly fuse: string;
  readonly atEnd: string;
  readonly needs: string;
  /** why this size and this fuse, a sentence each */
  readonly why: readonly string[];
  /** no wire or fuse does it, its copper is not known, or too few volts arrive */
  readonly isOpen: boolean;
}

/** What is fed over which line, and what is not. */
export interface FeedRows {
  readonly fed: readonly FedRow[];
  /** no circuit feeds it, or no way leads to it */
  readonly unfed: readonly UnfedRow[];
}

const unitOf = (end: string): string => end.split('.')[0] ?? end;

const circuitOf = (index: CardBoat, feed: FeedEntry) =>
  index.panels.get(feed.panel)?.circuits.find(({ id }) => id === feed.circuit);

/** The least fuse a maker of what hangs on a feed asks for. */
const makerA = (plan: Plan, { to }: FeedEntry): number | undefined =>
  plan.loads.find(({ port, source }) => port === to && source.by === 'circuit')?.fuseA;

const wireOf = ({ wire, areaMm2, awg }: FeedEntry): string => {
  if (areaMm2 !== undefined) return printWire({ areaMm2, awg });
  return wire === 'aboard' ? 'not known' : 'none does it';
};

const fuseOf = ({ fuseA, fuseBy, fuseSlow }: FeedEntry, guard: string): string => {
  if (fuseA === undefined) return '';
  return fuseBy === 'in-line'
    ? `${printAmps(fuseA)} ${fuseSlow === true ? 'slow ' : ''}fuse of its own`
    : `${printAmps(fuseA)} ${guard}`;
};

const drawsOf = ({ loadA, peakA }: FeedEntry): string =>
  `${printAmps(loadA)}${peakA === undefined ? '' : `, ${printAmps(peakA)} for moments`}`;

const lostOf = (lostV: number | undefined, lostPct: number | undefined): string =>
  lostV === undefined || lostPct === undefined ? '' : printLost({ lostV, lostPct });

type Cells = Omit<FedRow, keyof UnfedRow | 'panel' | 'length'>;

const noCells: Cells = {
  circuit: '',
  draws: '',
  wire: '',
  drop: '',
  realDrop: '',
  fuse: '',
  atEnd: '',
  needs: '',
  why: [],
  isOpen: false,
};

const cellsOf = (index: CardBoat, plan: Plan, feed: FeedEntry): Cells => {
  const circuit = circuitOf(index, feed);
  const guard = circuitKinds[circuit?.kind ?? 'fuse'];
  return {
    feed,
    circuit: circuit?.name === undefined ? feed.circuit : `${feed.circuit} ${circuit.name}`,
    draws: drawsOf(feed),
    wire: wireOf(feed),
    drop: lostOf(feed.dropV, feed.dropPct),
    realDrop: lostOf(feed.realDropV, feed.realDropPct),
    fuse: fuseOf(feed, guard),
    atEnd: feed.atEndV === undefined ? '' : printVolts(feed.atEndV),
    needs: feed.leastV === undefined ? '' : `${Number(feed.leastV.toFixed(2))} V`,
    why: feedWords(feed, { guard, makerA: makerA(plan, feed), isBus: index.buses.has(feed.to) }),
    isOpen: feedIsOpen(feed),
  };
};

/** The name of what a line feeds; with its plug only where two feeds lead to one unit. */
const nameOf = (index: CardBoat, fed: string, all: readonly string[]): string => {
  const unit = unitOf(fed);
  const isOne = all.filter((other) => unitOf(other) === unit).length === 1;
  return endWords(index, isOne ? unit : fed);
};

/** Panels, and circuits on each, in the order the boat file has them: that of the switches. */
const orderOf = (index: CardBoat): ReadonlyMap<string, number> =>
  new Map(
    index.boat.supply.panels
      .flatMap((panel) => [panel.id, ...panel.circuits.map(({ id }) => `${panel.id}.${id}`)])
      .map((key, at) => [key, at]),
  );

const rowOf = (index: CardBoat, plan: Plan, line: LineEntry, all: readonly string[]): FedRow => {
  const [panel, fed] = endsOfFeed(index, line);
  const feed = plan.feeds.find((entry) => entry.line === line.id);
  const cells = feed === undefined ? noCells : cellsOf(index, plan, feed);
  const figures = [cells.wire, cells.fuse, cells.atEnd === '' ? '' : `${cells.atEnd} at its end`].filter(Boolean);
  return {
    ...cells,
    key: line.id,
    what: nameOf(index, fed, all),
    fact: `from ${endWords(index, panel)}, ${lineLength(line)}${figures.length === 0 ? '' : `: ${figures.join(', ')}`}`,
    lights: [line.id, unitOf(fed)],
    panel: endWords(index, panel),
    length: `${printLength({ valueM: line.longestM, as: 'metres' })}${line.guessed ? ', by guess' : ''}`,
  };
};

const fedRows = (index: CardBoat, plan: Plan): FedRow[] => {
  const lines = plan.lines.filter(({ kind }) => kind === 'feed');
  const all = lines.map((line) => endsOfFeed(index, line)[1]);
  const order = orderOf(index);
  const placeOf = ({ feed }: FedRow, panel: string): number =>
    order.get(`${panel}.${feed?.circuit}`) ?? order.get(panel) ?? 0;
  return lines
    .map((line) => ({ row: rowOf(index, plan, line, all), panel: endsOfFeed(index, line)[0] }))
    .sort((one, other) => placeOf(one.row, one.panel) - placeOf(other.row, other.panel))
    .map(({ row }) => row);
};

/** Every feed of the plan with its panel, length, wire, fuse and volts and why they are so, and everything that still lacks one. */
export const feedRows = (index: CardBoat, plan: Plan): FeedRows => ({
  fed: fedRows(index, plan),
  unfed: unfedRows(index, plan),
});
