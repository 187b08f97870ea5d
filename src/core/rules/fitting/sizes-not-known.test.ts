import { expect, test } from 'vitest';
import { fitFindings } from './fit-case.test-helper.ts';
import { sizesNotKnown } from './sizes-not-known.ts';

test('sizes that are known pass, unknown ones are advice', () => {
  expect(fitFindings(sizesNotKnown)).toEqual([]);
  expect(fitFindings(sizesNotKnown, { verdict: 'not-known' })).toMatchObject([
    { level: 'advice', about: ['display', 'hole'] },
  ]);
});
