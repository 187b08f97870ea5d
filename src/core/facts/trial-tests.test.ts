import { expect, it } from 'vitest';
import { dockTrials } from './trial-tests.ts';

it('LG-05: the distress key is never pressed for a test; a test call to another station does it (practice)', () => {
  const radio = dockTrials.find(({ id }) => id === 'radio-check');
  expect(radio?.does).toContain('never press the distress key for a test, a test call to another station does it');
  expect(dockTrials.filter(({ does }) => /press the distress key/.test(does) && !/never press/.test(does))).toEqual([]);
});
