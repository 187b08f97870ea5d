import type { Boat } from '../boat/boat-schema.ts';
import type { ShoppingEntry } from '../plan-shape.ts';

/** The shopping list, each item with where it stands by the boat file. */
export const withOrders = (list: readonly ShoppingEntry[], ordered: Boat['orders'] = []): ShoppingEntry[] => {
  const orders = new Map(ordered.map((order) => [order.item, order]));
  return list.map((entry) => {
    const order = orders.get(entry.id);
    return order === undefined ? entry : { ...entry, order };
  });
};
