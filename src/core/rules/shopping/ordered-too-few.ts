import type { Rule } from '../rule.ts';

/** Less is at hand or ordered than the plan needs: a change since the order, or a spare counted as the part itself. */
export const orderedTooFew: Rule = {
  id: 'shopping/ordered-too-few',
  level: 'doubt',
  title: 'Less of an item is ordered than the plan needs.',
  sources: ['choice-orders'],
  looksAt: 'whole-plan',
  check: ({ plan }) =>
    plan.shopping.flatMap(({ id, item, count: needed, by, order }) => {
      if (order?.count === undefined || order.state === 'order' || order.state === 'returned') return [];
      if (order.count >= needed) return [];
      const unit = by === 'metre' ? 'm' : 'pieces';
      return [
        {
          about: [id],
          says: `Of ${item}, ${order.count} ${by === 'metre' ? 'm are' : order.count === 1 ? 'is' : 'are'} at hand or ordered; the plan needs ${needed}${by === 'metre' ? ' m' : ''}.`,
          measured: { value: order.count, unit },
          cure: `Order ${needed - order.count}${by === 'metre' ? ' m' : ''} more.`,
        },
      ];
    }),
};
