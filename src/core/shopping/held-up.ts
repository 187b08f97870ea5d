import type { Order } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { ShoppingEntry } from '../plan-shape.ts';
import { addDays } from '../units/add-days.ts';

/** An item that is not here yet and takes days to come. */
export interface Awaited {
  readonly id: string;
  readonly item: string;
  readonly leadDays: number;
  /** the day it comes, if it is ordered on the last day to order it; absent where no such day is said */
  readonly comes?: string;
  /** true where that last day is past and nobody has ordered it */
  readonly isLate: boolean;
  /** the lines, units and ways it is for */
  readonly for: readonly string[];
}

/** What the work waits for: what takes days to come, longest first, and how many items nobody has said days of. */
export interface HeldUp {
  readonly awaited: readonly Awaited[];
  readonly unknown: number;
  /** the last day on which anything comes, of what has a day */
  readonly lastDay?: string;
}

const isHere = (state: Order['state'] | undefined): boolean => state === 'have' || state === 'arrived';

/** Finds what holds up the work on a day; a day is year-month-day, so that days sort as text. */
export const heldUp = (shopping: readonly ShoppingEntry[], today: string): HeldUp => {
  const open = shopping.filter(({ order }) => !isHere(order?.state));
  const awaited = open
    .flatMap(({ id, item, order, for: whom }): Awaited[] => {
      if (order?.leadDays === undefined) return [];
      const { leadDays, orderBy, state } = order;
      const isLate = orderBy !== undefined && state !== 'ordered' && orderBy < today;
      const comes = orderBy === undefined ? {} : { comes: addDays(isLate ? today : orderBy, leadDays) };
      return [{ id, item, leadDays, ...comes, isLate, for: whom }];
    })
    .sort((a, b) => b.leadDays - a.leadDays || byCodeUnit(a.id, b.id));
  const days = awaited.flatMap(({ comes }) => comes ?? []).sort(byCodeUnit);
  const lastDay = days.at(-1);
  return { awaited, unknown: open.length - awaited.length, ...(lastDay === undefined ? {} : { lastDay }) };
};
