import { expect, test } from 'vitest';
import { boatLog } from '../../log/boat-log.ts';
import type { LogEntry } from '../../log/log-entry.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { testedOf } from './tested.ts';

const ohm = (spot: 'end-1' | 'end-2'): TestEntry => ({
  id: `dock/data-ohm:nav:${spot}`,
  group: 'bus',
  test: 'data-ohm',
  kind: 'number',
  unit: 'ohm',
  about: ['nav'],
  power: 'off',
  passes: { least: 50, most: 70 },
  source: 'esd-can',
});
const read = (id: string, spot: 'end-1' | 'end-2' | 'gone', value: number): LogEntry => ({
  kind: 'reading',
  id,
  at: '2027-03-31T09:30:00Z',
  test: `dock/data-ohm:nav:${spot}`,
  value,
});

test('what was tried is counted once, by its latest reading, and only if the plan still asks for it', () => {
  const tests = [ohm('end-1'), ohm('end-2')];
  expect(testedOf(tests, boatLog([]))).toEqual({ total: 2, tried: 0, wrong: 0 });
  const entries = [read('entry0001', 'end-1', 120), read('entry0002', 'gone', 40)];
  expect(testedOf(tests, boatLog(entries))).toEqual({ total: 2, tried: 1, wrong: 1 });
  expect(testedOf(tests, boatLog([...entries, read('entry0003', 'end-1', 60)]))).toEqual({
    total: 2,
    tried: 1,
    wrong: 0,
  });
});
