import type { Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { limitValue } from '../boat/limit-value.ts';
import { passageHours } from '../facts/buying.ts';
import { fillVerdict } from '../facts/cable-work.ts';
import { typicalPrices } from '../facts/prices.ts';
import type { LineEntry, PassageEntry, WayEntry } from '../plan-shape.ts';
import { plugPasses } from '../ways/fill-verdict.ts';
import { makeRouter } from '../ways/routes.ts';
import { type DrawnCable, drawnCable, keptByWay } from '../ways/way-fills.ts';
import { fitPlug, type PlugFit } from './fit-plug.ts';
import { leastPassages } from './least-passages.ts';
import { busOf, cutLine, gradeOf, type OrderInput } from './line-cutter.ts';
import { boughtMm } from './pieces-for.ts';

type Choice = PassageEntry['choices'][number];

/** The lines and the ways of a plan. `mayLeadRound`: whether a line may still be led another way. */
interface Ask {
  readonly lines: readonly LineEntry[];
  readonly ways: readonly WayEntry[];
  readonly mayLeadRound: boolean;
}

/** One line with the ways its plug does not pass. */
interface Stuck {
  readonly line: LineEntry;
  readonly ways: readonly string[];
}

/** What can be done about one line; its hole is priced by way. */
interface Offer extends Stuck {
  readonly fit: PlugFit | undefined;
  readonly round: Choice | undefined;
}

/** Lines whose plug does not pass, the choices for each, and the plugs to buy for what is chosen. */
export interface PlugPassages {
  readonly passages: PassageEntry[];
  readonly wants: PlugFit['wants'];
}

const longestMm = (line: LineEntry): number => Math.round(line.longestM * 1000);

const hourCost = ({ index }: OrderInput, hours: number): number =>
  Math.round((index.boat.prices ?? typicalPrices).hour * hours);

/** Tells of one cable which ways its plug certainly does not pass, beside the cables that stay there. */
const makeBlocks = (input: OrderInput): ((cable: DrawnCable) => (way: Way) => boolean) => {
  const kept = keptByWay(input.index);
  return ({ plugMm }) =>
    ({ id, bore }) => {
      if (plugMm === undefined || bore === undefined) return false;
      const inPlaceMm = (kept.get(id) ?? []).map(({ diameterMm }) => diameterMm);
      return plugPasses({ boreMm: bore.mm, inPlaceMm, plugMm }) === 'no';
    };
};

/** A hole wide enough for all that goes through; a pipe is not widened, and a rated bulkhead is not drilled. */
const widerHole = (input: OrderInput, way: Way | undefined, entry: WayEntry | undefined): Choice | undefined => {
  if (way === undefined || entry?.fitsAtMm === undefined) return undefined;
  const isPipe = way.kind === 'conduit' || way.kind === 'mast';
  if (isPipe || way.through === 'fire' || way.through === 'watertight') return undefined;
  return { does: 'wider-hole', cost: hourCost(input, passageHours.boreHole.value), wideMm: entry.fitsAtMm };
};

/** Whether a drop of some length keeps the limits of its bus, for one drop and for all. */
const dropKeeps = (input: OrderInput, line: LineEntry, mm: number): boolean => {
  const bus = busOf(input, line);
  const pieces = cutLine(input, line, mm);
  const own = bus?.drops.find(({ port }) =>
    [line.from, line.to].some((end) => end.split('.')[0] === port.split('.')[0]),
  );
  if (bus === undefined || pieces === undefined || own === undefined) return false;
  const boughtM = boughtMm(pieces) / 1000;
  const { boat } = input.index;
  return (
    boughtM <= limitValue(boat, 'nmea2000-one-drop') &&
    bus.dropsM - own.boughtM + boughtM <= limitValue(boat, 'nmea2000-all-drops')
  );
};

/** The cheapest route through ways that the plug passes and the cable still fits, by what cable and hours cost more. */
const otherWay = (input: OrderInput, line: LineEntry, ask: Ask, isShut: (way: Way) => boolean): Choice | undefined => {
  const { index } = input;
  const [from, to] = [line.places[0], line.places.at(-1)];
  if (line.kind === 'trunk' || from === undefined || to === undefined) return undefined;
  const { outsideMm } = drawnCable(line, [...input.buses.values()]);
  const fills = new Map(ask.ways.map((way) => [way.id, way]));
  const isFull = ({ id }: Way): boolean => {
    const fill = fills.get(id);
    if (fill === undefined || fill.lines.includes(line.id)) return false;
    return fill.fillPct + (100 * outsideMm ** 2) / fill.boreMm ** 2 > fillVerdict.refuseAbovePct;
  };
  const open = index.boat.ways.filter((way) => !isShut(way) && !isFull(way));
  const router = makeRouter({ ...index, boat: { ...index.boat, ways: open } });
  const route = router.cheapest({ kind: line.kind, from, to });
  const now = makeRouter(index).along({ from, ways: line.ways });
  if (route === undefined || now === undefined) return undefined;
  const mm = longestMm(line) + route.longestMm - now.longestMm;
  if (line.kind === 'drop' && !dropKeeps(input, line, mm)) return undefined;
  const [was, is] = [cutLine(input, line, longestMm(line)), cutLine(input, line, mm)];
  const perM = input.prices.perM(line.kind, gradeOf(input, line)) ?? 0;
  const cable =
    was === undefined || is === undefined
      ? Math.round((perM * (route.longestMm - now.longestMm)) / 1000)
      : is.cost - was.cost;
  const hoursOf = (ways: readonly string[]): number =>
    ways.reduce((sum, way) => sum + (index.ways.get(way)?.hours ?? 0), 0);
  const work = hourCost(input, hoursOf(route.ways) - hoursOf(line.ways));
  return { does: 'other-way', cost: Math.max(0, cable + work), ways: [...route.ways] };
};

/** Whether the plan itself may lead a line another way: what is settled stays, and the cables of a bus follow its layout. */
const isFree = (line: LineEntry): boolean => line.kind !== 'drop' && line.kind !== 'trunk' && line.pinned === undefined;

const stuckLines = (
  { index, buses }: OrderInput,
  lines: readonly LineEntry[],
  blocks: ReturnType<typeof makeBlocks>,
): Stuck[] => {
  const entries = [...buses.values()];
  return lines
    .filter(({ kept, pinned }) => kept === undefined && pinned !== 'fitted')
    .flatMap((line) => {
      const isShut = blocks(drawnCable(line, entries));
      const ways = [...new Set(line.ways)].filter((id) => {
        const way = index.ways.get(id);
        return way !== undefined && isShut(way);
      });
      return ways.length === 0 ? [] : [{ line, ways }];
    });
};

const entriesOf = (
  { line, ways, fit, round }: Offer,
  holes: ReadonlyMap<string, Choice>,
  takes: Choice['does'] | undefined,
): PassageEntry[] => {
  const canWiden = ways.every((way) => holes.has(way));
  return ways.map((way) => {
    const hole = canWiden ? holes.get(way) : undefined;
    const choices = [
      ...(fit === undefined ? [] : [{ does: 'fit-plug', cost: fit.cost } satisfies Choice]),
      ...(hole === undefined ? [] : [hole]),
      ...(round === undefined ? [] : [round]),
    ].sort(
      (a, b) => Number(b.does === takes) - Number(a.does === takes) || a.cost - b.cost || byCodeUnit(a.does, b.does),
    );
    return { way, line: line.id, choices, ...(takes === undefined ? {} : { takes }) };
  });
};

/**
 * The lines whose moulded plug certainly does not pass a way they go through, each with what can be done about it and what
 * that costs: a plug fitted on the spot, a wider hole, another way. `takes` is what makes all of them together cheapest, and
 * comes first; a hole serves all lines through it. Lines that lie in their ways already have passed. By way and line.
 */
export const plugPassages = (input: OrderInput, ask: Ask): PlugPassages => {
  const blocks = makeBlocks(input);
  const stuck = stuckLines(input, ask.lines, blocks);
  if (stuck.length === 0) return { passages: [], wants: [] };
  const entries = new Map(ask.ways.map((way) => [way.id, way]));
  const buses = [...input.buses.values()];
  const offers = stuck.map(({ line, ways }): Offer => {
    const isShut = blocks(drawnCable(line, buses));
    return { line, ways, fit: fitPlug(input, line, ways), round: otherWay(input, line, ask, isShut) };
  });
  const holes = new Map(
    [...new Set(stuck.flatMap(({ ways }) => ways))].flatMap((id): [string, Choice][] => {
      const hole = widerHole(input, input.index.ways.get(id), entries.get(id));
      return hole === undefined ? [] : [[id, hole]];
    }),
  );
  const takes = leastPassages(
    offers.map(({ line, ways, fit, round }) => ({
      id: line.id,
      ways,
      ...(fit === undefined ? {} : { fitPlug: fit.cost }),
      ...(round === undefined || !ask.mayLeadRound || !isFree(line) ? {} : { otherWay: round.cost }),
    })),
    new Map([...holes].map(([way, { cost }]) => [way, cost])),
  );
  return {
    passages: offers
      .flatMap((offer) => entriesOf(offer, holes, takes.get(offer.line.id)))
      .sort((one, other) => byCodeUnit(one.way, other.way) || byCodeUnit(one.line, other.line)),
    wants: offers.flatMap(({ line, fit }) => (takes.get(line.id) === 'fit-plug' ? (fit?.wants ?? []) : [])),
  };
};
