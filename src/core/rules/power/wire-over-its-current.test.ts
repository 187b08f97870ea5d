import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aFeed } from './power-case.test-helper.ts';
import { wireOverItsCurrent } from './wire-over-its-current.ts';

const found = (over: Parameters<typeof aFeed>[0]) => findingsOf(wireOverItsCurrent, { plan: { feeds: [aFeed(over)] } });

test('a wire that stands carries up to its current for long, and not more', () => {
  expect(found({ loadA: 30 })).toEqual([]);
  expect(found({ loadA: 30.5, engineSpace: true, carrying: 8 })).toMatchObject([
    {
      level: 'fault',
      measured: { value: 30.5 },
      limit: { value: 30, unit: 'A' },
      says: expect.stringContaining('through the engine space, with 8 conductors in one bundle'),
    },
  ]);
});

test('a wire of unknown size has no current to be held against', () => {
  const { ampacityA: _ampacity, ...unread } = aFeed({ loadA: 90 });
  expect(findingsOf(wireOverItsCurrent, { plan: { feeds: [unread] } })).toEqual([]);
});
