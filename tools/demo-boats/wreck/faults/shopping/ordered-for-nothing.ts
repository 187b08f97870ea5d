import type { Fault } from '../../fault.ts';

/** A drop has arrived that is longer than any drop may be; no line takes it. */
export const shoppingOrderedForNothing: Fault = {
  rule: 'shopping/ordered-for-nothing',
  about: ['heavy-drop-12000mm'],
  plant: (boat) => ({
    ...boat,
    orders: [...(boat.orders ?? []), { item: 'heavy-drop-12000mm', state: 'arrived', supplier: 'the shop ashore' }],
  }),
};
