import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { changeOrder } from '../../core/quote/change-order.ts';
import { changeOrderText } from './change-order-text.ts';

const tern = aBoat().boat;
const textOf = (before: Boat, after: Boat): string => {
  const [old, now] = [before, after].map((boat) => ({ boat, plan: plan(boat, new Map()) }));
  if (old === undefined || now === undefined) throw new Error('no boats');
  return changeOrderText({ before, after }, changeOrder({ before: old, after: now }));
};

test('of a boat and herself says that nothing changes', () => {
  expect(textOf(tern, tern)).toBe(`CHANGE ORDER, ${tern.name}\nNothing changes.\n`);
});

test('names what changes in 80 columns with its price', () => {
  const text = textOf(tern, aBoat().unit('radio', { fate: 'goes' }).boat);
  expect(text).toContain('- Now taken out:');
  expect(text).toMatch(/Together, in EUR +[+-]?\d+\.\d\d/);
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});
