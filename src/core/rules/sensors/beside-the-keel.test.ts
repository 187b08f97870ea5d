import { expect, test } from 'vitest';
import { besideTheKeel } from './beside-the-keel.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('far enough off it passes; beside the keel, and a wheel behind its edge, are doubts of their own', () => {
  const from = { check: 'from-keel', limit: 0.15, unit: 'm' } as const;
  const ahead = { check: 'ahead-of-keel', limit: 0.3, unit: 'm' } as const;
  expect(sensorFindings(besideTheKeel, { checks: [{ ...from, verdict: 'ok', measured: 0.4 }] })).toEqual([]);
  const both = sensorFindings(besideTheKeel, {
    checks: [
      { ...from, verdict: 'bad', measured: 0.1 },
      { ...ahead, verdict: 'bad', measured: -0.5 },
    ],
  });
  expect(both.map(({ limit }) => limit?.value)).toEqual([0.3, 0.15]);
  expect(both.map(({ says }) => says).join(' ')).toContain('0.50 m behind the forward edge of the keel');
});
