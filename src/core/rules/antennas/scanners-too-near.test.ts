import { expect, test } from 'vitest';
import { antennaFindings } from './antenna-case.test-helper.ts';
import { scannersTooNear } from './scanners-too-near.ts';

const found = (verdict: 'ok' | 'advice') =>
  antennaFindings(scannersTooNear, { scanners: [{ one: 'display', other: 'gnss', acrossM: 1.2, upM: 0.4, verdict }] });

test('scanners far enough apart pass', () => {
  expect(found('ok')).toEqual([]);
});

test('too near is advice with what books ask for', () => {
  const [finding] = found('advice');
  expect(finding).toMatchObject({ level: 'advice', about: ['display', 'gnss'], limit: { value: 0.5 } });
  expect(finding?.says).toContain('1.20 m apart and 0.40 m');
});
