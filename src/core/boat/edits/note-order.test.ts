import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { edits } from './index.ts';

const { 'note-order': noteOrder } = edits;
const tern = aBoat().boat;

test('what is noted of an order stands beside what was noted before, and is forgotten by name', () => {
  const first = noteOrder.apply(tern, { item: 'micro-tee', leadDays: 14 });
  expect(first.orders).toEqual([{ item: 'micro-tee', state: 'order', leadDays: 14 }]);
  const second = noteOrder.apply(first, { item: 'micro-tee', supplier: 'the chandler', state: 'ordered' });
  expect(second.orders).toEqual([{ item: 'micro-tee', state: 'ordered', supplier: 'the chandler', leadDays: 14 }]);
  const third = noteOrder.apply(second, { item: 'micro-tee', forget: ['leadDays'] });
  expect(third.orders).toEqual([{ item: 'micro-tee', state: 'ordered', supplier: 'the chandler' }]);
});

test('what is wrong in it is refused', () => {
  expect(() => noteOrder.apply(tern, { item: 'micro-tee', orderBy: 'tomorrow' })).toThrow(
    '`orderBy` cannot be "tomorrow".',
  );
});
