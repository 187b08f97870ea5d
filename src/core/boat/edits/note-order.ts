import * as z from 'zod';
import { orderSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

const { item, state, ...optional } = orderSchema.shape;

const forgettable = ['count', 'supplier', 'leadDays', 'orderBy', 'due'] as const;

const fieldWords = {
  count: 'count',
  supplier: 'supplier',
  leadDays: 'days to come',
  orderBy: 'last day to order',
  due: 'to arrive on',
} as const;

/** Notes something of the order of an item; what is left out stays, what is in `forget` is no longer said. An item nobody said anything of is to be ordered. */
export const noteOrder = defineEdit({
  id: 'note-order',
  params: z.strictObject({
    item,
    state: z.exactOptional(state),
    ...optional,
    forget: z.exactOptional(z.array(z.enum(forgettable)).min(1)),
  }),
  title: ({ item: of, state: newState, forget = [], ...wanted }, { sheets }) => {
    const facts = [
      ...(newState === undefined ? [] : [newState === 'order' ? 'to be ordered' : newState]),
      ...forgettable.flatMap((field) => (wanted[field] === undefined ? [] : [`${fieldWords[field]} ${wanted[field]}`])),
      ...forget.map((field) => `${fieldWords[field]} not known`),
    ];
    const name = sheets.find(({ id }) => of === `unit-${id}`)?.name ?? of;
    return `${name}: ${facts.join(', ')}.`;
  },
  change: (boat, { item: of, forget = [], ...wanted }) => {
    const { ...order } = (boat.orders ?? []).find((own) => own.item === of) ?? { item: of, state: 'order' as const };
    for (const field of forget) delete order[field];
    boat.orders = [...(boat.orders ?? []).filter((own) => own.item !== of), { ...order, ...wanted }];
  },
});
