import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { tooManyDevices } from './too-many-devices.ts';

test('50 devices pass and 51 are a fault (BB-06, several public installation handbooks)', () => {
  const levels = (devices: number) => findingsOf(tooManyDevices, { bus: { devices } }).map((finding) => finding.level);
  expect([50, 51].map(levels)).toEqual([[], ['fault']]);
});
