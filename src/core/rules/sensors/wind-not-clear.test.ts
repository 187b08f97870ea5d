import { expect, test } from 'vitest';
import { sensorFindings } from './sensor-case.test-helper.ts';
import { windNotClear } from './wind-not-clear.ts';

test('clear air passes, an antenna beside it is advice with its name', () => {
  expect(sensorFindings(windNotClear, { checks: [{ check: 'clear-air', verdict: 'ok' }] })).toEqual([]);
  const bad = { check: 'clear-air', verdict: 'bad', measured: 0.3, limit: 0.5, unit: 'm', by: 'gnss' } as const;
  expect(sensorFindings(windNotClear, { checks: [bad] })).toMatchObject([
    { level: 'advice', about: ['compass', 'gnss'], measured: { value: 0.3 } },
  ]);
});
