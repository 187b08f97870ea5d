import { expect, test } from 'vitest';
import { offsetSign } from './offset-sign.ts';
import { foundWith } from './typed-case.test-helper.ts';

const found = (figure: number) => foundWith(offsetSign, [{ unit: 'compass', what: 'depth-offset', figure, in: 'm' }]);

test('a plus where the offset to the keel wants a minus is a danger: the screen shows more water than there is', () => {
  expect(found(1.1)).toMatchObject([
    { id: 'settings/offset-sign:compass', level: 'danger', says: expect.stringContaining('more water than there is') },
  ]);
  expect(found(1.1)[0]?.says).toContain('-1.10 m');
});

test('a minus is right, and so is nothing', () => {
  expect(found(-1.1)).toEqual([]);
  expect(found(0)).toEqual([]);
});
