import { byCodeUnit } from '../boat/ids.ts';
import { smallPartPrices } from '../facts/buying.ts';
import type { LineEntry } from '../plan-shape.ts';
import { busOf, cutLine, gradeOf, type OrderInput } from './line-cutter.ts';
import { lineJoints } from './line-joints.ts';
import { boughtMm, madeUpCost, type Pieces, piecesFor } from './pieces-for.ts';
import { brokenAsBought, type LaidBus } from './trunk-as-bought.ts';

/** One line with what it is made of. `bought`: whether its pieces are still to be bought. */
export interface CutLine {
  readonly line: LineEntry;
  readonly cut?: Pieces;
  readonly toBuy: boolean;
}

/** The pieces a person has fixed, bought or fitted for a line: they stand, and cost nothing more. */
const pinnedCut = (input: OrderInput, line: LineEntry): CutLine | undefined => {
  const pins = input.index.boat.pins?.pieces;
  const pin = pins !== undefined && Object.hasOwn(pins, line.id) ? pins[line.id] : undefined;
  if (pin === undefined) return undefined;
  const ready = input.prices.ready(line.kind, gradeOf(input, line));
  const priced = pin.pieces
    .filter(({ cable }) => cable === undefined)
    .map(({ mm }) => {
      const sold = ready.find((entry) => entry.mm === mm);
      const costPerM = input.prices.perM(line.kind, gradeOf(input, line)) ?? 0;
      return { mm, made: sold === undefined, cost: sold?.cost ?? madeUpCost({ mm, made: { costPerM, endsCost: 0 } }) };
    });
  return {
    line,
    cut: {
      pieces: priced.map(({ mm, made }) => ({ mm, made })),
      cost: priced.reduce((sum, { cost }) => sum + cost, 0),
    },
    toBuy: pin.state === 'fixed',
  };
};

const longestMm = (line: LineEntry): number => Math.round(line.longestM * 1000);

/** What the pieces of a stretch of trunk are longer than the longest it could be, mm. */
const excessMm = ({ line, cut }: CutLine): number =>
  cut === undefined ? 0 : Math.max(0, boughtMm(cut) - longestMm(line));

const wetJoints = ({ index }: OrderInput, line: LineEntry, { pieces }: Pieces): number =>
  lineJoints(index, { ...line, pieces: pieces.map(({ mm, made }) => ({ lengthM: mm / 1000, made })) }).filter(
    ({ isWet }) => isWet,
  ).length;

/** A joint in the bilge or in the weather is where a line fails: then one piece, ready-made or made up, if that can be had. */
const withoutWetJoints = (input: OrderInput, line: LineEntry, cut: Pieces): Pieces => {
  if (line.kind !== 'trunk' || wetJoints(input, line, cut) === 0) return cut;
  const grade = gradeOf(input, line);
  const mm = longestMm(line);
  const [ready] = input.prices
    .ready(line.kind, grade)
    .filter((entry) => entry.mm >= mm)
    .map((entry): Pieces => ({ pieces: [{ mm: entry.mm, made: false }], cost: entry.cost }))
    .sort((one, other) => one.cost - other.cost);
  const costPerM = input.prices.perM(line.kind, grade);
  if (costPerM === undefined) return ready ?? cut;
  const cost = madeUpCost({ mm, made: { costPerM, endsCost: 2 * smallPartPrices.busFieldPlug } });
  return ready !== undefined && ready.cost <= cost ? ready : { pieces: [{ mm, made: true }], cost };
};

/** The cheapest pieces of a stretch that waste less than it does now; absent where none do or it is bought already. */
const lessWasteful = (input: OrderInput, now: CutLine): Required<CutLine> | undefined => {
  const { line, cut, toBuy } = now;
  if (cut === undefined || !toBuy || excessMm(now) === 0) return undefined;
  const grade = gradeOf(input, line);
  const made = { costPerM: input.prices.perM('trunk', grade) ?? 0, endsCost: 2 * smallPartPrices.busFieldPlug };
  const ready = input.prices.ready('trunk', grade);
  const next = piecesFor({ neededMm: longestMm(line), ready, made, mostMm: boughtMm(cut) - 1 });
  if (next === undefined) return undefined;
  const dry = withoutWetJoints(input, line, next);
  return { line, cut: boughtMm(dry) < boughtMm(cut) ? dry : next, toBuy };
};

/**
 * The trunk of a bus whose pieces, laid as bought, would break a limit that its layout keeps: stretch by stretch less is
 * wasted, each time where a metre less costs least, until the limits hold.
 */
const withinLimits = (input: OrderInput, bus: LaidBus, cuts: readonly CutLine[]): readonly CutLine[] => {
  const fitted = [...cuts];
  const holds = (): boolean =>
    brokenAsBought(bus, new Map(fitted.map((cut) => [cut.line.id, excessMm(cut)]))).length === 0;
  const perMm = (now: CutLine, next: CutLine): number =>
    ((next.cut?.cost ?? 0) - (now.cut?.cost ?? 0)) / (excessMm(now) - excessMm(next));
  while (!holds()) {
    const choices = fitted.flatMap((now, n) => {
      const next = lessWasteful(input, now);
      return next === undefined ? [] : [{ n, next, perMm: perMm(now, next) }];
    });
    const [best] = choices.sort((one, other) => one.perMm - other.perMm || one.n - other.n);
    if (best === undefined) break;
    fitted[best.n] = best.next;
  }
  return fitted;
};

/**
 * What every line is made of: the cheapest pieces that cover the longest it could be, those of a trunk within the limits of
 * its bus and with no joint in the bilge or the weather where that can be had. Sorted by line id.
 */
export const cutLines = (
  input: OrderInput,
  { lines, laid }: { lines: readonly LineEntry[]; laid: readonly LaidBus[] },
): readonly CutLine[] => {
  const cuts = lines.map((line): CutLine => {
    const pinned = pinnedCut(input, line);
    if (pinned !== undefined) return pinned;
    // Bought for its route, or in it already: there is nothing to buy, and nobody has said of which pieces it is made.
    if (line.pinned === 'bought' || line.pinned === 'fitted') return { line, toBuy: false };
    const cut = cutLine(input, line, longestMm(line));
    return cut === undefined ? { line, toBuy: false } : { line, cut: withoutWetJoints(input, line, cut), toBuy: true };
  });
  const done = new Map(cuts.map((cut) => [cut.line.id, cut]));
  for (const bus of laid) {
    const entry = input.buses.get(bus.problem.bus);
    const ofBus = cuts.filter(
      ({ line, cut }) => line.kind === 'trunk' && cut !== undefined && busOf(input, line) === entry,
    );
    // A layout that breaks a limit as it is has a finding of its own; nothing bought would mend it.
    if (entry === undefined || entry.layout.broken.length > 0 || ofBus.every((cut) => excessMm(cut) === 0)) continue;
    for (const cut of withinLimits(input, bus, ofBus)) done.set(cut.line.id, cut);
  }
  return [...done.values()].sort((one, other) => byCodeUnit(one.line.id, other.line.id));
};
