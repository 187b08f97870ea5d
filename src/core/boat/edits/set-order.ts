import { orderSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

const stateWords = {
  have: 'is at hand',
  order: 'is to be ordered',
  ordered: 'is ordered',
  arrived: 'has arrived',
  returned: 'went back',
} as const;

/** Says where an item of the shopping list stands, in place of what was said of it before. */
export const setOrder = defineEdit({
  id: 'set-order',
  params: orderSchema,
  title: ({ item, state }) => `${item} ${stateWords[state]}.`,
  change: (boat, order) => {
    const others = (boat.orders ?? []).filter(({ item }) => item !== order.item);
    boat.orders = [...others, order];
  },
});
