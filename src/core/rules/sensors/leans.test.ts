import { expect, test } from 'vitest';
import { leans } from './leans.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('10° pass, 14° are a doubt held against the limit of the boat', () => {
  const check = { check: 'tilt', limit: 10, unit: '°' } as const;
  expect(sensorFindings(leans, { checks: [{ ...check, verdict: 'ok', measured: 10 }] })).toEqual([]);
  expect(sensorFindings(leans, { checks: [{ ...check, verdict: 'bad', measured: 14 }] })).toMatchObject([
    { level: 'doubt', measured: { value: 14, unit: '°' }, limit: { value: 10 } },
  ]);
});
