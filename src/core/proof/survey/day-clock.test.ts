import { expect, test } from 'vitest';
import { startDayClock } from './day-clock.ts';

const spanOf = (...times: readonly (string | undefined)[]) => {
  const clock = startDayClock();
  for (const time of times) clock.take(time);
  return clock.spanS();
};

test('seconds are told off over midnight; what is no time of day is passed over', () => {
  expect(spanOf('235959.50', '000000.00', undefined, '', '250000', '000001')).toBe(1.5);
});

test('a step back takes no time away', () => {
  expect(spanOf('100000', '100010', '100005', '100012')).toBe(12);
});

test('one time is no span', () => {
  expect([spanOf(), spanOf('100000')]).toEqual([undefined, undefined]);
});
