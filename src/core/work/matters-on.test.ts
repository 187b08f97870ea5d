import { expect, test } from 'vitest';
import { mattersOn } from './matters-on.ts';

const atSea = { afloat: true, left: false, moves: true };
const pump = { function: 'bilge-pump', hard: true } as const;
const depth = { function: 'depth', hard: false } as const;
const charger = { function: 'shore-charging', hard: false } as const;

test('the pumps matter whenever she floats, depth only when she must be able to move', () => {
  expect([pump, depth].map((one) => mattersOn(one, atSea))).toEqual([true, true]);
  expect([pump, depth].map((one) => mattersOn(one, { ...atSea, moves: false }))).toEqual([true, false]);
  expect([pump, depth].map((one) => mattersOn(one, { ...atSea, afloat: false }))).toEqual([false, false]);
});

test('the charger matters while nobody is aboard, ashore too', () => {
  expect(mattersOn(charger, atSea)).toBe(false);
  expect(mattersOn(charger, { afloat: false, left: true, moves: false })).toBe(true);
});
