import { shoppingKinds } from '../../core/facts/shopping-kinds.ts';
import type { Plan, ShoppingEntry } from '../../core/plan-shape.ts';
import { inUnits, type LengthUnits } from './in-units.ts';
import { type OrderNames, orderWords, printMoney, whatFor } from './order-words.ts';

/** One item of the shopping list in words; the price of all of it in hundredths, absent where none is known. */
export interface ShoppingRow {
  readonly id: string;
  readonly item: string;
  /** "6", or "23.00 m" of what is sold by the metre */
  readonly count: string;
  readonly amount: number;
  readonly by: ShoppingEntry['by'];
  readonly each: string;
  readonly sum?: number;
  /** what it is for, each in words, in the order of the list */
  readonly for: readonly string[];
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
  readonly why: string;
  /** "sure", or "could change if …" */
  readonly sure: string;
  /** where it stands; absent where nobody has said */
  readonly stands?: string;
  readonly isSure: boolean;
}

/** The items of one kind, and the price of those that have one, in hundredths. */
export interface ShoppingGroup {
  readonly title: string;
  readonly rows: readonly ShoppingRow[];
  readonly sum: number;
}

/** What each kind of item is called at the head of its group. */
export const kindTitles: Readonly<Record<ShoppingEntry['kind'], string>> = {
  unit: 'Units',
  trunk: 'Trunk of the bus',
  drop: 'Drops of the bus',
  'bus-part': 'Tees and ends of the bus',
  cable: 'Other cable',
  plug: 'Plugs fitted aboard',
  adapter: 'Adapters',
  power: 'Power',
  passage: 'Through deck and bulkheads',
  fixing: 'Fixing',
  label: 'Labels',
  spare: 'Spares',
};

/** The shopping list by kind in the order of the plan, lengths in the units asked. */
export const shoppingGroups = (
  names: OrderNames,
  plan: Pick<Plan, 'shopping' | 'lines'>,
  units: LengthUnits = 'metres',
): ShoppingGroup[] => {
  const nameOf = whatFor(names, plan);
  const rowOf = (entry: ShoppingEntry): ShoppingRow => ({
    id: entry.id,
    item: inUnits(entry.item, units),
    count: entry.by === 'metre' ? inUnits(`${entry.count} m`, units) : String(entry.count),
    amount: entry.count,
    by: entry.by,
    each: entry.each === undefined ? '' : printMoney(entry.each),
    ...(entry.each === undefined ? {} : { sum: Math.round(entry.each * entry.count) }),
    for: entry.for.map(nameOf),
    lights: entry.for,
    why: inUnits(entry.why, units),
    sure: entry.couldChangeIf === undefined ? 'sure' : `could change if ${inUnits(entry.couldChangeIf, units)}`,
    ...(entry.order === undefined ? {} : { stands: orderWords(entry.order) }),
    isSure: entry.sure,
  });
  return shoppingKinds.flatMap((kind) => {
    const rows = plan.shopping.filter((entry) => entry.kind === kind).map(rowOf);
    if (rows.length === 0) return [];
    return [{ title: kindTitles[kind], rows, sum: rows.reduce((sum, row) => sum + (row.sum ?? 0), 0) }];
  });
};
