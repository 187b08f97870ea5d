import { expect, test } from 'vitest';
import type { JoinEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { tooManyListeners } from './too-many-listeners.ts';

const pairTo = (...listeners: string[]): JoinEntry => ({
  id: 'pair',
  kind: 'nmea0183',
  members: [
    { kit: 'converter', port: 'out', as: 'talk' },
    ...listeners.map((kit) => ({ kit, port: 'in', as: 'listen' as const })),
  ],
  from: 'file',
  lines: [],
});
const found = (...joins: JoinEntry[]) => findingsOf(tooManyListeners, { plan: { joins } });

test('three listeners pass', () => {
  expect(found(pairTo('a', 'b', 'c'))).toEqual([]);
});

test('four are a doubt, also when they hang on two pairs of one output', () => {
  expect(found(pairTo('a', 'b', 'c', 'd'))).toMatchObject([
    { level: 'doubt', measured: { value: 4 }, limit: { value: 3 } },
  ]);
  expect(found(pairTo('a', 'b'), { ...pairTo('c', 'd'), id: 'second' })).toHaveLength(1);
});
