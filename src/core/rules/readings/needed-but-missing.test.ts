import { expect, test } from 'vitest';
import type { ReadingEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { neededButMissing } from './needed-but-missing.ts';

const missing = (fields: Partial<ReadingEntry> = {}): ReadingEntry => ({
  reading: 'wind-apparent',
  at: 'display',
  must: true,
  arrives: false,
  by: [],
  backups: [],
  whyNot: {
    link: { broken: 'no-source' },
    says: 'Nothing aboard sends it.',
    cures: [{ says: 'Add a wind sensor.', edits: [] }],
  },
  ...fields,
});

test('a reading that arrives is not spoken of', () => {
  const { whyNot: _, ...arrived } = missing({ arrives: true, rests: 'typical', by: ['gnss.n2k', 'display.n2k'] });
  expect(findingsOf(neededButMissing, { plan: { readings: [arrived] } })).toEqual([]);
});

test('a must reading that is missing is a fault with the reason and the cure', () => {
  expect(findingsOf(neededButMissing, { plan: { readings: [missing()] } })).toMatchObject([
    {
      id: 'readings/needed-but-missing:display:wind-apparent',
      level: 'fault',
      says: 'Apparent wind does not arrive at Helm display. Nothing aboard sends it.',
      cure: 'Add a wind sensor.',
    },
  ]);
});

test('a nice-to-have reading that is missing is advice', () => {
  const [finding] = findingsOf(neededButMissing, { plan: { readings: [missing({ must: false })] } });
  expect(finding?.level).toBe('advice');
});

test('what hangs on a generation nobody has looked up is a doubt, not yet a fault', () => {
  const whyNot: ReadingEntry['whyNot'] = { link: { broken: 'generation-unknown' }, says: 'Not confirmed.', cures: [] };
  const levels = [true, false].map(
    (must) => findingsOf(neededButMissing, { plan: { readings: [missing({ must, whyNot })] } })[0]?.level,
  );
  expect(levels).toEqual(['doubt', 'advice']);
});

test('two engines missing at one screen are two findings', () => {
  const readings = [0, 1].map((instance) => missing({ reading: 'engine', instance }));
  expect(findingsOf(neededButMissing, { plan: { readings } }).map(({ id }) => id)).toEqual([
    'readings/needed-but-missing:display:engine:0',
    'readings/needed-but-missing:display:engine:1',
  ]);
});
