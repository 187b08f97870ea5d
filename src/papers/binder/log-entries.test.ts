import { expect, test } from 'vitest';
import { aFullBoat } from '../../core/boat/full-boat.test-helper.ts';
import { logEntries } from './log-entries.ts';

test('the log tells revisions and differences by their day, things by their names', () => {
  const entries = logEntries(aFullBoat());
  expect(entries.map(({ dateIso }) => dateIso)).toEqual(['2027-03-01', '2027-05-02', '2027-05-03', '2027-05-04']);
  expect(entries[0]).toMatchObject({ what: 'Revision A, as planned: For the yard.', by: 'the owner' });
  expect(entries[1]?.what).toBe('helm-circuit of panel main-panel: was 15 A, is 10 A. None of 15 A was at hand.');
});
