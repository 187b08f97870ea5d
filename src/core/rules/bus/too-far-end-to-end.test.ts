import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { tooFarEndToEnd } from './too-far-end-to-end.ts';

test('101 m of light cable from plug to plug fails though the trunk alone is 93 m (BB-01, Real Time Automation, DeviceNet cabling note)', () => {
  const [finding] = findingsOf(tooFarEndToEnd, { bus: { longestM: 93, farthestM: 101 } });
  expect(finding).toMatchObject({ level: 'fault', about: ['nav'], measured: { value: 101 }, limit: { value: 100 } });
});

test('100 m of light cable passes', () => {
  expect(findingsOf(tooFarEndToEnd, { bus: { farthestM: 100 } })).toEqual([]);
});

test('mid cable of 230 m is a doubt, of 251 m a fault', () => {
  const level = (farthestM: number) =>
    findingsOf(tooFarEndToEnd, { bus: { grade: 'mid', farthestM } }).map((finding) => finding.level);
  expect([200, 230, 251].map(level)).toEqual([[], ['doubt'], ['fault']]);
});
