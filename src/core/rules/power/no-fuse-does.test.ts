import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noFuseDoes } from './no-fuse-does.ts';
import { aFeed } from './power-case.test-helper.ts';

const found = (over: Parameters<typeof aFeed>[0]) => findingsOf(noFuseDoes, { plan: { feeds: [aFeed(over)] } });

test('a unit that draws more for long than the fuse its maker states has no fuse', () => {
  expect(found({ whyNot: 'maker', loadA: 5 })).toMatchObject([
    { level: 'fault', measured: { value: 5, unit: 'A' }, says: expect.stringContaining('more than the fuse') },
  ]);
});

test('so has one for which no rating is made, and one whose wire bears none', () => {
  expect(found({ whyNot: 'no-rating' })).toHaveLength(1);
  expect(found({ whyNot: 'conductor' })).toHaveLength(1);
  expect(found({ whyNot: 'drop' })).toEqual([]);
  expect(found({})).toEqual([]);
});
