import { expect, test } from 'vitest';
import { notMeasured } from './not-measured.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('one whose place is known passes', () => {
  expect(sensorFindings(notMeasured, { checks: [{ check: 'tilt', verdict: 'ok' }] })).toEqual([]);
});

test('what is open is asked for in one advice', () => {
  const [found, ...rest] = sensorFindings(notMeasured, {
    checks: [
      { check: 'tilt', verdict: 'ask' },
      { check: 'headroom', verdict: 'ask' },
    ],
  });
  expect(rest).toEqual([]);
  expect(found).toMatchObject({ level: 'advice', about: ['compass'] });
  expect(found?.says).toContain('how far the hull leans there, how much room is over it');
});
