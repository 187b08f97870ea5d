import type { Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { passageHours, smallPartPrices } from '../facts/buying.ts';
import { typicalPrices } from '../facts/prices.ts';
import type { LineEntry, PassageEntry, WayEntry } from '../plan-shape.ts';
import { plugPasses } from '../ways/fill-verdict.ts';
import { makeRouter } from '../ways/routes.ts';
import { drawnCable, keptByWay } from '../ways/way-fills.ts';
import { cutLine, gradeOf, needsMouldedLead, type OrderInput } from './line-cutter.ts';

type Choice = PassageEntry['choices'][number];

/** One line whose plug does not pass a way. */
interface Stuck {
  readonly way: Way;
  readonly line: LineEntry;
}

const longestMm = (line: LineEntry): number => Math.round(line.longestM * 1000);

const hourCost = ({ index }: OrderInput, hours: number): number =>
  Math.round((index.boat.prices ?? typicalPrices).hour * hours);

/** The cable drawn bare and its plug fitted behind the hole: what that costs more than ready-made cable, with the work. */
const fitPlug = (input: OrderInput, { line }: Stuck): Choice[] => {
  if (needsMouldedLead(input.index, line)) return [];
  const moulded = cutLine(input, line, longestMm(line));
  const bare = cutLine({ ...input, bare: new Set([line.id]) }, line, longestMm(line));
  if (moulded === undefined || bare === undefined) return [];
  const parts = Math.max(0, bare.cost - moulded.cost);
  return [{ does: 'fit-plug', cost: parts + hourCost(input, passageHours.fitPlug.value) }];
};

/** A hole wide enough for the plug; a pipe is not widened, and a rated bulkhead is not drilled. */
const widerHole = (input: OrderInput, { way }: Stuck, ways: ReadonlyMap<string, WayEntry>): Choice[] => {
  const wideMm = ways.get(way.id)?.fitsAtMm;
  if (way.kind !== 'gland' || way.through === 'fire' || way.through === 'watertight' || wideMm === undefined) return [];
  const gland = way.through === 'deck' ? (input.prices.each('cable-gland', smallPartPrices.gland) ?? 0) : 0;
  return [{ does: 'wider-hole', cost: hourCost(input, passageHours.boreHole.value) + gland, wideMm }];
};

/** Another way, by what its cable costs more; trunk and drops follow their layout. */
const otherWay = (input: OrderInput, { way, line }: Stuck): Choice[] => {
  const { index } = input;
  const [from, to] = [line.places[0], line.places.at(-1)];
  if (line.kind === 'trunk' || line.kind === 'drop' || from === undefined || to === undefined) return [];
  const without = { ...index, boat: { ...index.boat, ways: index.boat.ways.filter(({ id }) => id !== way.id) } };
  const router = makeRouter(without);
  const route = router.cheapest({ kind: line.kind, from, to });
  const now = makeRouter(index).along({ from, ways: line.ways });
  if (route === undefined || now === undefined) return [];
  const perM = input.prices.perM(line.kind, gradeOf(input, line)) ?? 0;
  const cost = Math.max(0, Math.round((perM * (route.longestMm - now.longestMm)) / 1000));
  return [{ does: 'other-way', cost, ways: [...route.ways] }];
};

/**
 * The lines whose moulded plug certainly does not pass a way they go through, each with what can be done about it and what
 * that costs, cheapest first: a plug fitted on the spot, a wider hole, another way. Sorted by way and line.
 */
export const plugPassages = (
  input: OrderInput,
  { lines, ways }: { readonly lines: readonly LineEntry[]; readonly ways: readonly WayEntry[] },
): PassageEntry[] => {
  const kept = keptByWay(input.index);
  const buses = [...input.buses.values()];
  const entries = new Map(ways.map((way) => [way.id, way]));
  const stuck = lines
    .filter((line) => line.kept === undefined)
    .flatMap((line): Stuck[] => {
      const { plugMm } = drawnCable(line, buses);
      if (plugMm === undefined) return [];
      return [...new Set(line.ways)].flatMap((id) => {
        const way = input.index.ways.get(id);
        const inPlaceMm = (kept.get(id) ?? []).map(({ diameterMm }) => diameterMm);
        const isStuck = way?.bore !== undefined && plugPasses({ boreMm: way.bore.mm, inPlaceMm, plugMm }) === 'no';
        return way !== undefined && isStuck ? [{ way, line }] : [];
      });
    });
  return stuck
    .map((one) => ({
      way: one.way.id,
      line: one.line.id,
      choices: [...fitPlug(input, one), ...widerHole(input, one, entries), ...otherWay(input, one)].sort(
        (a, b) => a.cost - b.cost || byCodeUnit(a.does, b.does),
      ),
    }))
    .sort((one, other) => byCodeUnit(one.way, other.way) || byCodeUnit(one.line, other.line));
};

/** The lines that are drawn bare and get their plug on the spot, because that is the cheapest wherever they are stuck. */
export const drawnBare = (passages: readonly PassageEntry[]): ReadonlySet<string> => {
  const all = new Set(passages.map(({ line }) => line));
  for (const { line, choices } of passages) if (choices[0]?.does !== 'fit-plug') all.delete(line);
  return all;
};
