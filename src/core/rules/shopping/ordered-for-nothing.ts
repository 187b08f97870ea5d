import type { Rule } from '../rule.ts';

/** Something is ordered or at hand that nothing in the plan needs any longer: time to send it back while one can. */
export const orderedForNothing: Rule = {
  id: 'shopping/ordered-for-nothing',
  level: 'doubt',
  title: 'An item is ordered that the plan does not need.',
  sources: ['choice-orders'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const wanted = new Set(plan.shopping.map(({ id }) => id));
    return (index.boat.orders ?? [])
      .filter(({ item, state }) => (state === 'ordered' || state === 'arrived') && !wanted.has(item))
      .map(({ item, state }) => ({
        about: [item],
        says: `${item} ${state === 'ordered' ? 'is ordered' : 'has arrived'}, and nothing in the plan needs it.`,
        cure:
          state === 'ordered'
            ? 'Take it off the order, or say what it is bought for by fixing the pieces of its line.'
            : 'Send it back, or keep it as a spare and mark it as at hand.',
      }));
  },
};
