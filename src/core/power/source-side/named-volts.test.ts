import { expect, it } from 'vitest';
import { namedV } from './named-volts.ts';

it.each([
  [13.8, 12],
  [12, 12],
  [11, 12],
  [27.6, 24],
  [24, 24],
  [48, 48],
  [5, 5],
])('%d V go by the name of %d V', (volts, named) => {
  expect(namedV(volts)).toBe(named);
});
