import { expect, test } from 'vitest';
import { bursts } from './burst.ts';

test('MS-41: forty units asked what they are send 800 frames, 512 ms of bus time (arithmetic)', () => {
  expect(bursts(40).at(-1)).toEqual({ of: 'product-information', frames: 800, busMs: 512 });
});

test('each unit claims once; where each asks all others, every question is answered by all', () => {
  expect(bursts(40)[0]).toEqual({ of: 'claims', frames: 40, busMs: 25.6 });
  // MS-106: three units, of which one asked twice: 4 questions, 15 claims
  const [, asked] = bursts(3);
  expect(asked?.frames).toBe(3 + 3 * 3 + 3);
  expect(asked?.frames).toBe(15 + 4 - (3 + 1));
  expect(asked?.busMs).toBeCloseTo(12 * 0.64 + 3 * 0.44, 9);
});

test('nobody says nothing', () => {
  expect(bursts(0)).toEqual([]);
});
