import { expect, test } from 'vitest';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import { essentialsUnsaid } from './essentials-unsaid.ts';
import { foundIn } from './work-case.test-helper.ts';

const panel = aJob('panel:main-panel', { kind: 'panel', about: ['main-panel'] });
const unknown = (one: 'horn' | 'bilge-pump') => ({ function: one, hard: false, ways: [], unknown: true as const });

test('a panel opened, and nobody said what horn and pumps hang on, is one doubt', () => {
  const functions = [unknown('bilge-pump'), unknown('horn')];
  expect(foundIn(essentialsUnsaid, { jobs: [panel], functions })).toMatchObject([
    { level: 'doubt', about: [], says: expect.stringContaining('bilge pumps, horn') },
  ]);
});

test('said, or with no panel opened, it is none', () => {
  expect(foundIn(essentialsUnsaid, { jobs: [panel], functions: [] })).toEqual([]);
  expect(foundIn(essentialsUnsaid, { jobs: [], functions: [unknown('horn')] })).toEqual([]);
});
