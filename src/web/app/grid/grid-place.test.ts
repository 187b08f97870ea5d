import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isInRange, placeByKey } from './grid-place.ts';

const size = { rows: 4, columns: 3 };
const press = (key: string, ctrlKey = false) => ({ key, ctrlKey, metaKey: false });

test.each([
  ['ArrowRight', false, { row: 1, column: 2 }],
  ['ArrowLeft', false, { row: 1, column: 0 }],
  ['ArrowDown', true, { row: 3, column: 1 }],
  ['ArrowUp', true, { row: 0, column: 1 }],
  ['Home', false, { row: 1, column: 0 }],
  ['End', true, { row: 3, column: 2 }],
  ['PageDown', false, { row: 3, column: 1 }],
] as const)('%s, with Ctrl %s', (key, isFar, to) => {
  expect(placeByKey({ row: 1, column: 1 }, press(key, isFar), size)).toEqual(to);
});

test('a letter leads nowhere', () => {
  expect(placeByKey({ row: 1, column: 1 }, press('a'), size)).toBeUndefined();
});

test('no key leads out of the grid', () => {
  const keys = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'PageUp', 'PageDown', 'Home', 'End'];
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.constantFrom(...keys), fc.boolean())), (presses) => {
      let at = { row: 0, column: 0 };
      for (const [key, isFar] of presses) at = placeByKey(at, press(key, isFar), size) ?? at;
      expect(isInRange({ from: { row: 0, column: 0 }, to: { row: 3, column: 2 } }, at)).toBe(true);
    }),
  );
});

test('a range is the same from whichever corner it was drawn', () => {
  const cells = [0, 1, 2, 3].flatMap((row) => [0, 1, 2].map((column) => ({ row, column })));
  const corners = [
    { from: { row: 2, column: 0 }, to: { row: 1, column: 1 } },
    { from: { row: 1, column: 0 }, to: { row: 2, column: 1 } },
  ];
  const [one, other] = corners.map((range) => cells.filter((cell) => isInRange(range, cell)));
  expect(one).toHaveLength(4);
  expect(one).toEqual(other);
});
