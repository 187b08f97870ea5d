import { expect, test } from 'vitest';
import { nearThePropeller } from './near-the-propeller.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

const found = (measured: number, verdict: 'ok' | 'bad') =>
  sensorFindings(nearThePropeller, {
    checks: [{ check: 'ahead-of-propeller', verdict, measured, limit: 1.04, unit: 'm' }],
  });

test('one a tenth of the waterline ahead passes', () => {
  expect(found(1.2, 'ok')).toEqual([]);
});

test('nearer, or behind it, is a doubt with both distances', () => {
  const [near] = found(0.6, 'bad');
  expect(near).toMatchObject({ level: 'doubt', measured: { value: 0.6 }, limit: { value: 1.04, unit: 'm' } });
  expect(near?.says).toContain('0.60 m ahead of the propeller');
  expect(found(-0.4, 'bad')[0]?.says).toContain('0.40 m behind the propeller');
});
