import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fuseUnderLoad } from './fuse-under-load.ts';
import { aFeed } from './power-case.test-helper.ts';

test('what hangs on one circuit is added up', () => {
  const feeds = [aFeed({ loadA: 3 }), aFeed({ to: 'gnss.n2k', loadA: 2.5 })];
  expect(findingsOf(fuseUnderLoad, { plan: { feeds } })).toMatchObject([
    {
      level: 'fault',
      about: ['display.dc', 'gnss.n2k', 'helm-circuit'],
      measured: { value: 5.5 },
      limit: { value: 5 },
    },
  ]);
});

test('a circuit that carries just what hangs on it is not too small', () => {
  expect(findingsOf(fuseUnderLoad, { plan: { feeds: [aFeed({ loadA: 5 })] } })).toEqual([]);
});

test('loads of two circuits do not add up', () => {
  const feeds = [aFeed({ loadA: 3 }), aFeed({ to: 'gnss.n2k', circuit: 'nav-circuit', loadA: 3 })];
  expect(findingsOf(fuseUnderLoad, { plan: { feeds } })).toEqual([]);
});
