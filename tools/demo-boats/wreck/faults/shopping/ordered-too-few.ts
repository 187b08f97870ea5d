import type { Fault } from '../../fault.ts';

/** One tee is ordered for a boat full of units. */
export const shoppingOrderedTooFew: Fault = {
  rule: 'shopping/ordered-too-few',
  about: ['micro-tee'],
  plant: (boat) => ({
    ...boat,
    orders: [...(boat.orders ?? []), { item: 'micro-tee', state: 'ordered', count: 1 }],
  }),
};
