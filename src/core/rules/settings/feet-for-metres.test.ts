import { expect, test } from 'vitest';
import { feetForMetres } from './feet-for-metres.ts';
import { foundWith } from './typed-case.test-helper.ts';

const found = (figure: number, unit: 'm' | 'ft') =>
  foundWith(feetForMetres, [{ unit: 'display', what: 'depth-alarm', figure, in: unit }]);

test('an alarm of 2.6 m where 0.80 m is meant looks like feet', () => {
  expect(found(2.6, 'm')).toMatchObject([
    {
      id: 'settings/feet-for-metres:display:depth-alarm',
      level: 'doubt',
      says: expect.stringContaining('feet typed as metres?'),
    },
  ]);
});

test('and 0.8 ft like metres typed as feet', () => {
  expect(found(0.8, 'ft')[0]?.says).toContain('metres typed as feet?');
});

test('right in either unit, or merely off, it is none', () => {
  expect(found(2.6, 'ft')).toEqual([]);
  expect(found(0.8, 'm')).toEqual([]);
  expect(found(1.2, 'm')).toEqual([]);
});
