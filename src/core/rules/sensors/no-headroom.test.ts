import { expect, test } from 'vitest';
import { noHeadroom } from './no-headroom.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('100 mm pass, 40 mm are a doubt', () => {
  const check = { check: 'headroom', limit: 100, unit: 'mm' } as const;
  expect(sensorFindings(noHeadroom, { checks: [{ ...check, verdict: 'ok', measured: 100 }] })).toEqual([]);
  expect(sensorFindings(noHeadroom, { checks: [{ ...check, verdict: 'bad', measured: 40 }] })).toMatchObject([
    { level: 'doubt', measured: { value: 40, unit: 'mm' }, limit: { value: 100 } },
  ]);
});
