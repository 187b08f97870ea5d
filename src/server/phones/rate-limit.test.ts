import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rateLimit } from './rate-limit.ts';

test('no span has more of one sender, nor of all, than may be, however they mix', () => {
  const step = fc.record({ sender: fc.constantFrom('a', 'b', 'c'), passMs: fc.integer({ min: 0, max: 400 }) });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 200 }), (steps) => {
      let nowMs = 0;
      const limit = rateLimit({ perSender: 3, inAll: 5, spanMs: 1000, nowMs: () => nowMs });
      const taken: { readonly sender: string; readonly atMs: number }[] = [];
      for (const { sender, passMs } of steps) {
        nowMs += passMs;
        const isRoom = limit.hasRoom(sender);
        expect(limit.take(sender)).toBe(isRoom);
        if (isRoom) taken.push({ sender, atMs: nowMs });
      }
      // spans follow each other, so at worst two of them lie within the time of one
      for (const { atMs } of taken) {
        const within = taken.filter((one) => one.atMs >= atMs && one.atMs < atMs + 1000);
        expect(within.length).toBeLessThanOrEqual(10);
        expect(within.filter(({ sender }) => sender === 'a').length).toBeLessThanOrEqual(6);
      }
    }),
    { numRuns: 50 },
  );
});

test('what comes as many at once is counted as many', () => {
  const limit = rateLimit({ perSender: 10, inAll: 100, spanMs: 1000, nowMs: () => 0 });
  expect(limit.take('a', 12)).toBe(true);
  expect(limit.take('a')).toBe(false);
  expect(limit.hasRoom('b')).toBe(true);
});

test('a hundred thousand senders take no more room than a thousand', () => {
  const limit = rateLimit({ perSender: 1, inAll: 1e9, spanMs: 1e9, nowMs: () => 0 });
  for (let sender = 0; sender < 100_000; sender += 1) limit.take(String(sender));
  // the last is remembered, the first is forgotten
  expect(limit.hasRoom('99999')).toBe(false);
  expect(limit.hasRoom('0')).toBe(true);
});
