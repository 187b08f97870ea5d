import { expect, test } from 'vitest';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { notLookedAt } from './not-looked-at.ts';

test('a unit of which it is known how it stands passes, and so does one that usually touches no metal', () => {
  const known = withMetal(aSteelBoat(), { id: 'dome', kind: 'radar', mount: 'isolated' });
  expect(isolationFindings(notLookedAt, known)).toEqual([]);
  expect(isolationFindings(notLookedAt, withMetal(aSteelBoat(), { id: 'screen', kind: 'display' }))).toEqual([]);
});

test('all that nobody has looked at are one doubt, with their number', () => {
  const boat = ['one', 'two', 'three', 'four', 'five'].reduce(
    (builder, id) => withMetal(builder, { id, kind: 'radar' }),
    aSteelBoat(),
  );
  const found = isolationFindings(notLookedAt, boat);
  expect(found).toMatchObject([{ level: 'doubt', measured: { value: 5, unit: 'units' } }]);
  expect(found[0]?.says).toContain('and 1 more');
});
