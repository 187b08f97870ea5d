import { byCodeUnit } from '../boat/ids.ts';
import type { PhaseItem, PhaseSum } from '../phases-shape.ts';
import type { LineEntry, ShoppingEntry } from '../plan-shape.ts';

/** All that one boat takes: her order, and the lines it is cut for. */
export interface WholeOrder {
  readonly shopping: readonly ShoppingEntry[];
  readonly lines: readonly LineEntry[];
}

/** What was bought so far of one item, and the cables of it that are cut, by the line they were cut for. */
interface Stock {
  bought: number;
  /** metres cut so far of all that was bought */
  cutM: number;
  readonly byLine: Map<string, number[]>;
}

/** What a metre of rounding may hide: `mergeWants` rounds the same. */
const hairM = 1e-6;

const cutsOf = (lines: readonly LineEntry[]): ReadonlyMap<string, ReadonlyMap<string, readonly number[]>> => {
  const cuts = new Map<string, Map<string, number[]>>();
  for (const { id, pieces = [] } of lines)
    for (const { made, item, lengthM } of pieces) {
      if (!made || item === undefined) continue;
      const byLine = cuts.get(item) ?? new Map<string, number[]>();
      cuts.set(item, byLine.set(id, [...(byLine.get(id) ?? []), lengthM]));
    }
  return cuts;
};

/** The lengths of a line that none of its old cables reaches for: each old one serves one, the shortest that does. */
const notCovered = (wanted: readonly number[], old: readonly number[]): number[] => {
  const left = [...old].sort((a, b) => a - b);
  return [...wanted]
    .sort((a, b) => b - a)
    .filter((lengthM) => {
      const at = left.findIndex((pieceM) => pieceM >= lengthM - hairM);
      if (at < 0) return true;
      left.splice(at, 1);
      return false;
    });
};

/** Cuts what is new from what is bought, and gives the count to buy: cable once cut serves its own line only. */
const cutFrom = (stock: Stock, entry: ShoppingEntry, byLine: ReadonlyMap<string, readonly number[]>): number => {
  const wantedM = [...byLine.values()].flat().reduce((sum, lengthM) => sum + lengthM, 0);
  for (const [line, lengths] of byLine) {
    const old = stock.byLine.get(line) ?? [];
    const fresh = notCovered(lengths, old);
    stock.byLine.set(line, [...old, ...fresh]);
    stock.cutM += fresh.reduce((sum, lengthM) => sum + lengthM, 0);
  }
  // what is sold by the metre for more than lines
  const others = Math.max(0, entry.count - Math.ceil(wantedM - hairM));
  return Math.max(0, Math.ceil(stock.cutM - hairM) + others - stock.bought);
};

const itemOf = ({ id, item, kind, by, each }: ShoppingEntry, count: number): PhaseItem => ({
  id,
  item,
  kind,
  count,
  by,
  ...(each === undefined ? {} : { each }),
});

/** What items cost together, and how many have no price. */
export const sumOfItems = (items: readonly Pick<PhaseItem, 'count' | 'each'>[]): PhaseSum => ({
  cost: items.reduce((sum, { count, each = 0 }) => sum + Math.round(count * each), 0),
  unpriced: items.filter(({ each }) => each === undefined).length,
});

/**
 * What each phase has to buy, given all that the boat takes in each: its order less what was bought for the phases before. A
 * piece serves wherever a piece of its item is wanted; cable cut from the reel serves again only in the line it was cut for.
 */
export const phaseOrders = (wholes: readonly WholeOrder[]): PhaseItem[][] => {
  const stocks = new Map<string, Stock>();
  return wholes.map(({ shopping, lines }) => {
    const cuts = cutsOf(lines);
    return shopping.flatMap((entry) => {
      const stock = stocks.get(entry.id) ?? { bought: 0, cutM: 0, byLine: new Map<string, number[]>() };
      stocks.set(entry.id, stock);
      const byLine = cuts.get(entry.id);
      const isCut = entry.by === 'metre' && byLine !== undefined;
      const count = isCut ? cutFrom(stock, entry, byLine) : Math.max(0, entry.count - stock.bought);
      stock.bought += count;
      return count === 0 ? [] : [itemOf(entry, count)];
    });
  });
};

/** What the phases buy together beyond an order, by item; a count under nought where they buy fewer. Sorted by kind as given, then id. */
export const boughtBeyond = (
  orders: readonly (readonly PhaseItem[])[],
  atOnce: readonly ShoppingEntry[],
): PhaseItem[] => {
  const sums = new Map<string, PhaseItem>();
  const add = (item: PhaseItem): void => {
    const { count = 0 } = sums.get(item.id) ?? {};
    sums.set(item.id, { ...item, count: count + item.count });
  };
  for (const item of orders.flat()) add(item);
  for (const entry of atOnce) add(itemOf(entry, -entry.count));
  return [...sums.values()].filter(({ count }) => count !== 0).sort((a, b) => byCodeUnit(a.id, b.id));
};
