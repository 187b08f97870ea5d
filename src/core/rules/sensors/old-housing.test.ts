import { expect, test } from 'vitest';
import { oldHousing } from './old-housing.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('a new housing passes, the old one with a new insert is a doubt', () => {
  expect(sensorFindings(oldHousing, { checks: [{ check: 'housing', verdict: 'ok' }] })).toEqual([]);
  expect(sensorFindings(oldHousing, { checks: [{ check: 'housing', verdict: 'bad' }] })).toMatchObject([
    { level: 'doubt', about: ['compass'] },
  ]);
});
