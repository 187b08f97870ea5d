import fc from 'fast-check';
import { expect, it } from 'vitest';
import { longestWait } from './longest-wait.ts';
import { sufficientWait } from './sufficient-wait.ts';
import { waitingSet } from './waiting-set.test-helper.ts';

it('MS-43: the short test gives 2, 3 and 7 ms where the exact one gives 2, 3 and 3.5 (Davis et al. 2007)', () => {
  const set = waitingSet({ takesUs: [1000, 1000, 1000], everyUs: [2500, 3500, 3500], bitUs: 8 });
  expect(set.map(sufficientWait)).toEqual([2000, 3000, 7000]);
});

it('the exact wait is never longer than the short test says, where that is within the interval', () => {
  const message = fc.record({
    takesUs: fc.integer({ min: 320, max: 640 }),
    everyUs: fc.integer({ min: 2000, max: 100_000 }),
  });
  fc.assert(
    fc.property(fc.array(message, { minLength: 1, maxLength: 12 }), (messages) => {
      const takesUs = messages.map((one) => one.takesUs);
      for (const one of waitingSet({ takesUs, everyUs: messages.map(({ everyUs }) => everyUs), bitUs: 4 })) {
        const most = sufficientWait(one);
        if (most !== undefined && most <= one.everyUs) expect(longestWait(one)).toBeLessThanOrEqual(most);
      }
    }),
  );
});
